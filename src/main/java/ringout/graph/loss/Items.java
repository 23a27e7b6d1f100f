package ringout.graph.loss;

import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.PartKind;

/** Numbers everything that can let go: leads, plugs, parts, units and joints, then single conductors. */
public final class Items {
    private final Wiring wiring;
    private final int leads;
    private final int plugs;
    private final int parts;
    /** Number of the first plug of each unit. */
    private final int[] firstPlug;

    private Items(Circuit circuit) {
        wiring = circuit.wiring();
        Directory directory = wiring.directory();
        firstPlug = new int[directory.count() + 1];
        for (int unit = 0; unit < directory.count(); unit++) {
            firstPlug[unit + 1] = firstPlug[unit] + directory.type(unit).plugs().size();
        }
        leads = wiring.aircraft().leads().size();
        plugs = firstPlug[directory.count()];
        parts = wiring.parts().size();
    }

    /** The items of a circuit, the same in every state. */
    public static Items of(Circuit circuit) {
        return circuit.know(Items.class, Items::new);
    }

    /** Number of items, single conductors not counted. */
    public int count() {
        return leads + plugs + parts + wiring.directory().count();
    }

    /** The item of one conductor; they stand after all others. */
    public int wire(int wire) {
        return count() + wire;
    }

    /** The conductor an item is, or -1 when it is none. */
    public int wireOf(int index) {
        return index < count() ? -1 : index - count();
    }

    /** The item of a row of the list. */
    public int lead(int lead) {
        return lead;
    }

    /** The item of the plug a pin sits in; of a joint the joint itself. */
    public int plugOf(int pin) {
        int unit = wiring.unitOf(pin);
        return wiring.directory().isJoint(unit) ? unit(unit) : plug(unit, wiring.plugIndex(pin));
    }

    /** The item of a plug of a unit. */
    public int plug(int unit, int plug) {
        return leads + firstPlug[unit] + plug;
    }

    /** The item of a part. */
    public int part(int part) {
        return leads + plugs + part;
    }

    /** The item of a unit or joint. */
    public int unit(int unit) {
        return leads + plugs + parts + unit;
    }

    /** Describes an item. */
    public Item item(int index) {
        if (index < leads) {
            return new Item(
                    index,
                    Item.Kind.LEAD,
                    index,
                    -1,
                    wiring.aircraft().leads().get(index).id());
        }
        int plug = index - leads;
        if (plug < plugs) {
            int unit = unitOfPlug(plug);
            return new Item(index, Item.Kind.PLUG, plug, unit, wiring.plugName(unit, plug - firstPlug[unit]));
        }
        int part = plug - plugs;
        if (part < parts) {
            return part(index, wiring.parts().get(part));
        }
        int unit = part - parts;
        if (index >= count()) {
            Wire wire = wiring.wires().get(index - count());
            return new Item(index, Item.Kind.WIRE, wire.index(), -1, wire.lead().id());
        }
        boolean joint = wiring.directory().isJoint(unit);
        return new Item(
                index,
                joint ? Item.Kind.JOINT : Item.Kind.UNIT,
                unit,
                unit,
                wiring.directory().name(unit));
    }

    private int unitOfPlug(int plug) {
        int low = 0;
        int high = firstPlug.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (firstPlug[middle] <= plug) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private Item part(int index, Part part) {
        if (part.origin() instanceof Part.LeadFuse fuse) {
            String id = wiring.wires().get(fuse.wire()).lead().id();
            return new Item(index, Item.Kind.FUSE, part.index(), -1, "fuse in " + id);
        }
        if (part.origin() instanceof Part.Terminator terminator) {
            String unit = wiring.directory().name(terminator.unit());
            return new Item(index, Item.Kind.PART, part.index(), terminator.unit(), "terminator of " + unit);
        }
        Part.Inner inner = (Part.Inner) part.origin();
        String name = wiring.directory().name(inner.unit()) + ":" + inner.part().name();
        return new Item(index, kind(inner.part().kind().or(PartKind.LINK)), part.index(), inner.unit(), name);
    }

    private static Item.Kind kind(PartKind kind) {
        return switch (kind) {
            case FUSE -> Item.Kind.FUSE;
            case REGULATOR, LINEAR_REGULATOR, ISOLATED_CONVERTER -> Item.Kind.REGULATOR;
            default -> Item.Kind.PART;
        };
    }
}
