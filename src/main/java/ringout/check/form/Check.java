package ringout.check.form;

/** One rule. Stateless: everything it needs it is told, everything it has to say it says to the outcomes. */
public interface Check {
    /** Looks at an aircraft in one state. */
    void look(Situation at, Outcomes out);
}
