package ringout.read.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import ringout.model.End;
import ringout.model.PortSetting;
import ringout.model.shape.CellForm;
import ringout.model.shape.Given;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Characters;
import ringout.text.Ranges;

/**
 * The other way round: a record as the cells of a row that {@link TableReader} reads back as the same record, and what is
 * left of it that no cell can carry.
 */
public final class TableCells {
    private final Table table;
    private final Shape<?> shape;
    private final List<Column> columns;

    private TableCells(Table table) {
        this.table = table;
        this.shape = table.shape();
        this.columns = columns(shape);
    }

    /** The cells of a kind of table. */
    public static TableCells of(Table table) {
        return new TableCells(table);
    }

    /**
     * One row.
     *
     * @param texts text of each column, empty where nothing is given
     * @param rest the record without what the texts say; its key stays
     */
    public record Row(List<String> texts, Object rest) {}

    /** The heads of all columns a row may have. */
    public List<String> heads() {
        return columns.stream().map(Column::head).toList();
    }

    /** What a column stands for. */
    Column.Target target(int column) {
        return columns.get(column).target();
    }

    /** Positions of the columns that must be there even when no row says anything in them. */
    public boolean isNeeded(int column) {
        return columns.get(column).target() instanceof Column.Target.Own own
                && own.slot().kind() == Slot.Kind.REQUIRED;
    }

    /** Whether a name can say in a cell which record a row belongs to. */
    public static boolean isName(String key) {
        return !key.isEmpty()
                && key.equals(Characters.strip(key))
                && Characters.unprintable(key) < 0
                && plain(key)
                && !Ranges.is(key);
    }

    /** A record as a row; nothing when its name or a required field has no form in a cell. */
    public Optional<Row> row(Object record) {
        List<String> texts = new ArrayList<>();
        Object rest = record;
        List<String> ports = PortCells.texts(columns, record);
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            Optional<String> text = column.target() instanceof Column.Target.PerPort
                    ? Optional.of(ports.get(i))
                    : text(column.target(), record);
            if (text.isEmpty() && isNeeded(i)) {
                return Optional.empty();
            }
            texts.add(text.orElse(""));
            if (text.isPresent() && !text.get().isEmpty()) {
                rest = without(column.target(), rest);
            }
        }
        return Optional.of(new Row(List.copyOf(texts), rest));
    }

    private Optional<String> text(Column.Target target, Object record) {
        if (target instanceof Column.Target.Inner inner) {
            return text(inner.slot(), inner.slot().get(inner.outer().get(record)));
        }
        Slot slot = ((Column.Target.Own) target).slot();
        Object value = slot.get(record);
        boolean name = slot.type() == End.class || shape.isKey(slot);
        if (shape.isKey(slot)
                && shape.type() == ringout.model.Lead.class
                && value.toString().isEmpty()) {
            return Optional.of("");
        }
        return text(slot, value).filter(text -> !name || isName(text)).filter(text -> !isKind(slot, text));
    }

    /** A signal that is called like a kind of lead would be read as the kind. */
    private boolean isKind(Slot slot, String text) {
        return slot.name().equals("signal")
                && shape.slot("kind").filter(kind -> Cells.isKind(kind, text)).isPresent();
    }

    private static Optional<String> text(Slot slot, Object value) {
        boolean ranges = value instanceof List<?> list && list.stream().anyMatch(item -> Ranges.is(item.toString()));
        return CellForm.write(slot, value)
                .filter(text -> text.isEmpty() || (plain(text) && text.equals(Characters.strip(text)) && !ranges));
    }

    /** Whether a text in a cell is only a text: no ditto mark, and no start that could be taken for an empty cell. */
    private static boolean plain(String text) {
        return !Ditto.is(text) && !text.startsWith(",");
    }

    private Object without(Column.Target target, Object record) {
        if (target instanceof Column.Target.Inner inner) {
            Object outer = inner.outer().get(record);
            Object less = with(Shape.of(inner.outer().type()), outer, inner.slot(), Shape.absent(inner.slot()));
            return with(shape, record, inner.outer(), less);
        }
        Slot slot = target instanceof Column.Target.PerPort port ? port.list() : ((Column.Target.Own) target).slot();
        return shape.isKey(slot) ? record : with(shape, record, slot, Shape.absent(slot));
    }

    private static <R> Object with(Shape<R> shape, Object record, Slot slot, Object value) {
        return Objects.requireNonNull(shape.with(shape.type().cast(record), slot.name(), value));
    }

    private List<Column> columns(Shape<?> shape) {
        List<Column> all = new ArrayList<>();
        for (Slot slot : shape.slots()) {
            switch (slot.kind()) {
                case REQUIRED, DATUM, SCALARS -> add(all, slot.name(), new Column.Target.Own(slot));
                case RECORD -> inner(all, slot);
                case RECORDS -> {
                    if (slot.type() == PortSetting.class) {
                        ports(all, slot);
                    }
                }
                default -> {}
            }
        }
        return all;
    }

    private void inner(List<Column> all, Slot outer) {
        for (Slot slot : Shape.of(outer.type()).slots()) {
            if (slot.kind() == Slot.Kind.DATUM) {
                add(all, slot.name(), new Column.Target.Inner(outer, slot));
            }
        }
    }

    private void ports(List<Column> all, Slot list) {
        Shape<?> setting = Shape.of(list.type());
        for (Slot slot : setting.slots()) {
            if (slot.kind() == Slot.Kind.DATUM) {
                add(all, slot.name(), new Column.Target.PerPort(list, slot));
            }
        }
    }

    /** Takes the short head when the reader understands it as this field, else the one with the record's name before. */
    private void add(List<Column> all, String name, Column.Target target) {
        String head = name;
        if (target instanceof Column.Target.Inner inner && !means(name, target)) {
            head = inner.outer().name() + Character.toUpperCase(name.charAt(0)) + name.substring(1);
        }
        if (means(head, target)) {
            all.add(new Column(all.size(), head, target, ""));
        }
    }

    private boolean means(String head, Column.Target target) {
        return Heads.of(table)
                .column(0, head)
                .filter(column -> column.target().equals(target))
                .isPresent();
    }

    /** Whether what is left of a record says anything beyond its name. */
    public boolean isUsedUp(Object rest) {
        return !Given.beyondKey(shape, rest);
    }
}
