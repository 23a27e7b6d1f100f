package ringout.model;

import java.util.List;
import ringout.text.Span;

/** Rules of this project. */
public record Project(
        @Doc("where it stands in the user's file") Span at,
        @Doc("wire rule set") Datum<RuleSet> ruleSet,
        @Doc("limits that differ from the defaults") List<Limit> limits,
        @Doc("colour of supply conductors") Datum<String> railColour,
        @Doc("colour of 0V conductors") Datum<String> zeroColour,
        @Doc("colour of bus H") Datum<String> canHighColour,
        @Doc("colour of bus L") Datum<String> canLowColour,
        @Doc("common roots accepted for redundancy") List<String> acceptedCommon) {}
