package ringout.model;

import java.util.List;
import ringout.text.Span;

/** One connector half on a unit, or one clamp or stud of a board. */
public record Plug(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name used in the list") String name,
        @Doc("name printed on the box") Datum<String> printedName,
        @Doc("other names for the same plug") List<String> aliases,
        @Doc("plug family in trade words") Datum<String> family,
        @Doc("contacts it carries") Datum<ContactHalf> half,
        @Doc("key code; same code mates") Datum<String> key,

        @Doc("number of positions, when more than the pins listed")
        Datum<Integer> positions,

        @Doc("continuous rating of one contact") Datum<Double> contactRatingA,
        @Doc("short-time rating of one contact") Datum<Double> contactPeakA,
        @Doc("how long the short-time rating holds") Datum<Double> contactPeakS,
        @Doc("resistance of one mated contact") Datum<Double> contactMilliohm,
        @Doc("must be connected for the unit to do its job") Datum<Boolean> must,
        @Doc("group of which one plug must be connected") Datum<String> oneOf,

        @Doc("number of conductors a clamp or contact is drawn for")
        Datum<Integer> conductors,

        @Doc("two leads on different pins of this plug are declared")
        Datum<Boolean> twoLeads,

        @Doc("shroud or key prevents a shifted or reversed plug")
        Datum<Boolean> shrouded,

        @Doc("pre-charge (spark suppressing) contact") Datum<Boolean> suppressor,
        @Doc("sealed when mated") Datum<Boolean> sealed,
        @Doc("contact plating") Datum<String> plating,
        @Doc("thinnest wire of its contact") Datum<Double> crimpMinAwg,
        @Doc("thickest wire of its contact") Datum<Double> crimpMaxAwg,
        @Doc("torque of its screw") Datum<Double> torqueNm,
        @Doc("side it is reached from") Datum<String> access,
        @Doc("picture of the face and where pin 1 is") Datum<String> face,

        @Doc("place of the unit it is made for: left, front")
        Datum<String> positionRole,

        @Doc("contacts in order") List<Pin> pins,
        @Doc("free remark") Datum<String> note) {}
