package ringout.graph.loss;

/** How finely a lead is looked at. */
enum Grain {
    /** A lead lets go as one. */
    LEAD,
    /** Each conductor opens alone, and what is left carries any current. */
    WIRE
}
