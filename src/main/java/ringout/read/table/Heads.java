package ringout.read.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import ringout.model.PortSetting;
import ringout.model.shape.FieldUnit;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Nearest;

/** What the column heads of one kind of table may be. */
final class Heads {
    /** No head is longer; what is, is a cell. */
    private static final int LONGEST = 80;

    private static final Map<String, Heads> KNOWN = new ConcurrentHashMap<>();

    /** Folded word to target; the first to claim a word has it. */
    private final Map<String, Column.Target> words = new LinkedHashMap<>();

    /** Folded field name without its unit, to the fields of that name: peak to peakA and peakS. */
    private final Map<String, List<Column.Target>> bases = new LinkedHashMap<>();

    /** Field names as they are written, for hints. */
    private final List<String> names = new ArrayList<>();

    private Heads(Table table) {
        for (int i = 0; i < table.levels().size(); i++) {
            String column = table.levels().get(i).column();
            if (!column.isEmpty()) {
                Column.Target parent = new Column.Target.Parent(i);
                words.putIfAbsent(Synonyms.fold(column), parent);
            }
        }
        own(table.shape());
        inner(table.shape());
        synonyms(table);
        bases.forEach((base, targets) -> {
            if (targets.size() == 1) {
                words.putIfAbsent(base, targets.get(0));
            }
        });
    }

    /** The heads of a table. */
    static Heads of(Table table) {
        return KNOWN.computeIfAbsent(table.name(), name -> new Heads(table));
    }

    private void own(Shape<?> shape) {
        for (Slot slot : shape.slots()) {
            switch (slot.kind()) {
                case REQUIRED, DATUM, SCALARS -> claim(slot.name(), slot, new Column.Target.Own(slot));
                default -> {}
            }
        }
    }

    private void inner(Shape<?> shape) {
        for (Slot outer : shape.slots()) {
            if (outer.kind() == Slot.Kind.RECORD) {
                for (Slot slot : cells(Shape.of(outer.type()))) {
                    Column.Target target = new Column.Target.Inner(outer, slot);
                    words.putIfAbsent(Synonyms.fold(outer.name() + slot.name()), target);
                    claim(slot.name(), slot, target);
                }
            }
            if (outer.type() == PortSetting.class) {
                Shape<?> setting = Shape.of(outer.type());
                cells(setting).stream()
                        .filter(slot -> !setting.isKey(slot))
                        .forEach(slot -> claim(slot.name(), slot, new Column.Target.PerPort(outer, slot)));
            }
        }
    }

    private static List<Slot> cells(Shape<?> shape) {
        return shape.slots().stream()
                .filter(slot -> slot.kind() == Slot.Kind.DATUM || slot.kind() == Slot.Kind.REQUIRED)
                .toList();
    }

    private void claim(String name, Slot slot, Column.Target target) {
        words.putIfAbsent(Synonyms.fold(name), target);
        names.add(name);
        if (!FieldUnit.of(slot.name()).symbol().isEmpty()) {
            String base = name.replaceFirst("[A-Z][a-z0-9]*$", "");
            bases.computeIfAbsent(Synonyms.fold(base), word -> new ArrayList<>())
                    .add(target);
        }
    }

    private void synonyms(Table table) {
        Synonyms.of(table.name())
                .forEach((word, field) -> target(table.shape(), field).ifPresent(target -> {
                    words.putIfAbsent(word, target);
                    bases.computeIfAbsent(word, w -> new ArrayList<>()).add(target);
                }));
        for (int i = 0; i < table.levels().size(); i++) {
            Column.Target parent = new Column.Target.Parent(i);
            Synonyms.of(table.levels().get(i).column()).forEach((word, field) -> words.putIfAbsent(word, parent));
        }
    }

    private Optional<Column.Target> target(Shape<?> shape, String field) {
        int dot = field.indexOf('.');
        if (dot < 0) {
            return Optional.ofNullable(words.get(Synonyms.fold(field)));
        }
        Slot slot = shape.slot(field.substring(0, dot)).orElseThrow();
        String part = field.substring(dot + 1);
        return slot.kind() == Slot.Kind.REQUIRED
                ? Optional.of(new Column.Target.EndPart(
                        slot, List.of("unit", "plug", "pin").indexOf(part)))
                : Shape.of(slot.type()).slot(part).map(inner -> new Column.Target.PerPort(slot, inner));
    }

    /** Whether a cell looks like a head of this table. */
    boolean knows(String head) {
        return !head.isBlank() && column(0, head).isPresent();
    }

    /** The column a head makes; a unit of measure may stand in brackets or at its end. */
    Optional<Column> column(int index, String head) {
        if (head.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = head.strip();
        int open = plain.lastIndexOf(plain.endsWith("]") ? '[' : '(');
        if (open > 0 && (plain.endsWith(")") || plain.endsWith("]"))) {
            String name = Synonyms.fold(plain.substring(0, open));
            String unit = plain.substring(open + 1, plain.length() - 1).strip();
            Optional<Column> measured = measured(index, head, name, unit);
            return measured.isPresent() ? measured : bare(index, head, name, unit);
        }
        String folded = Synonyms.fold(plain);
        Column.Target target = words.get(folded);
        return target != null ? Optional.of(new Column(index, head, target, "")) : suffixed(index, head, folded);
    }

    /** What stands in brackets is a remark, unless the field has a unit of measure: then it must be one. */
    private Optional<Column> bare(int index, String head, String name, String remark) {
        Column.Target target = words.get(name);
        boolean doubtful = target != null && !unit(target).symbol().isEmpty() && !remark.contains(" ");
        return target == null || doubtful ? Optional.empty() : Optional.of(new Column(index, head, target, ""));
    }

    private Optional<Column> suffixed(int index, String head, String folded) {
        for (int i = 1; i < folded.length(); i++) {
            Optional<Column> found = measured(index, head, folded.substring(0, i), folded.substring(i));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Column> measured(int index, String head, String name, String unit) {
        String lower = unit.toLowerCase(Locale.ROOT);
        List<Column.Target> targets = new ArrayList<>(bases.getOrDefault(name, List.of()));
        Column.Target whole = words.get(name);
        if (whole != null) {
            targets.add(0, whole);
        }
        return targets.stream()
                .filter(target -> unit(target).factor(lower).isPresent())
                .findFirst()
                .map(target -> new Column(index, head, target, unit));
    }

    private static FieldUnit unit(Column.Target target) {
        if (target instanceof Column.Target.Own own) {
            return FieldUnit.of(own.slot().name());
        }
        if (target instanceof Column.Target.Inner inner) {
            return FieldUnit.of(inner.slot().name());
        }
        return target instanceof Column.Target.PerPort port
                ? FieldUnit.of(port.slot().name())
                : FieldUnit.of("");
    }

    /** A hint for a head nobody knows. */
    String hint(String head) {
        String near = Nearest.hint(head, names);
        if (near.isEmpty()) {
            near = Nearest.hint(head, words.keySet());
        }
        return near.isEmpty() ? "rename it, or call it note to keep it" : near;
    }
}
