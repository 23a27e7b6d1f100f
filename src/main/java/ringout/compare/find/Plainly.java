package ringout.compare.find;

import java.util.List;
import java.util.Set;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/** Tells at a glance that two records say the same in the same words; when it does not, a closer look is needed. */
final class Plainly {
    private static final Set<String> REMARKS = Set.of("note");

    private Plainly() {}

    /** Whether two records are equal in all but their place and remarks. */
    static boolean same(Object here, Object there) {
        if (here == there) {
            return true;
        }
        for (Slot slot : Shape.of(here.getClass()).slots()) {
            boolean counts = slot.kind() != Slot.Kind.SPAN && !REMARKS.contains(slot.name());
            if (counts && !same(slot, slot.get(here), slot.get(there))) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(Slot slot, Object here, Object there) {
        if (here == there) {
            return true;
        }
        return switch (slot.kind()) {
            case RECORD -> same(here, there);
            case RECORDS -> same((List<?>) here, (List<?>) there);
            default -> here.equals(there);
        };
    }

    /** Whether two lists hold the same records in the same order. */
    static boolean same(List<?> here, List<?> there) {
        if (here.size() != there.size()) {
            return false;
        }
        for (int i = 0; i < here.size(); i++) {
            if (!same(here.get(i), there.get(i))) {
                return false;
            }
        }
        return true;
    }
}
