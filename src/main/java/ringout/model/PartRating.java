package ringout.model;

import ringout.text.Span;

/** Values of a two-terminal part. */
public record PartRating(
        @Doc("where it stands in the user's file") Span at,
        @Doc("series resistance") Datum<Double> milliohm,
        @Doc("resistance") Datum<Double> ohm,
        @Doc("rated current; of a fuse, the fuse rating") Datum<Double> ratingA,
        @Doc("output voltage of a regulator") Datum<Double> outputV,
        @Doc("tolerance of that voltage") Datum<Double> tolerancePercent,
        @Doc("output power over input power, 0 to 1") Datum<Double> efficiency,
        @Doc("least input minus output") Datum<Double> dropoutV,
        @Doc("current at no load") Datum<Double> quiescentA,
        @Doc("forward drop of a diode") Datum<Double> forwardV,
        @Doc("cells in series") Datum<Integer> cells,
        @Doc("cells in parallel") Datum<Integer> parallel,
        @Doc("capacity of the pack") Datum<Double> capacityAh,
        @Doc("internal resistance of one cell") Datum<Double> cellMilliohm,
        @Doc("continuous discharge rate over capacity") Datum<Double> cRate,
        @Doc("voltage of a full cell") Datum<Double> fullV,
        @Doc("nominal voltage of a cell") Datum<Double> nominalV,
        @Doc("voltage of an empty cell") Datum<Double> emptyV,
        @Doc("chemistry of the cells") Datum<String> chemistry,
        @Doc("melting integral of a fuse") Datum<Double> meltA2s,
        @Doc("heat a linear regulator can shed") Datum<Double> heatW,
        @Doc("sits on a heat sink") Datum<Boolean> heatSink) {}
