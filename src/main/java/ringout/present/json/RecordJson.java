package ringout.present.json;

import java.io.StringWriter;
import java.util.List;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.Airframe;
import ringout.model.AsBuilt;
import ringout.model.Awg;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.Plug;
import ringout.model.Project;
import ringout.model.TypeLibrary;
import ringout.model.UnitType;
import ringout.model.shape.Given;
import ringout.model.shape.Marks;
import ringout.model.shape.Scalars;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** Any model record as JSON: its given fields in the order of the record, as the reader takes them. */
final class RecordJson {
    /** Records spread over lines, because they hold lists that people compare row by row. */
    private static final Set<Class<?>> SPREAD = Set.of(
            Aircraft.class,
            TypeLibrary.class,
            UnitType.class,
            Plug.class,
            Airframe.class,
            Project.class,
            AsBuilt.class);

    private static final JsonFactory FACTORY = new JsonFactory();

    private final RecordLayout layout;
    private final JsonGenerator json;

    private RecordJson(RecordLayout layout, JsonGenerator json) {
        this.layout = layout;
        this.json = json;
    }

    /** A record over lines where it holds lists; without a line end after it. */
    static String of(Shape<?> shape, Object record) {
        return write(new RecordLayout(), shape, record);
    }

    /** A record on one line. */
    static String line(Shape<?> shape, Object record) {
        RecordLayout layout = new RecordLayout();
        layout.startRow();
        return write(layout, shape, record);
    }

    private static String write(RecordLayout layout, Shape<?> shape, Object record) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(layout, text)) {
            new RecordJson(layout, json).record(shape, record);
        }
        return text.toString();
    }

    private void record(Shape<?> shape, Object record) {
        boolean row = !SPREAD.contains(shape.type());
        json.writeStartObject();
        if (row) {
            layout.startRow();
        }
        for (Slot slot : shape.slots()) {
            Object value = slot.get(record);
            if (Given.is(slot, value)) {
                json.writeName(slot.name());
                field(slot, value);
            }
        }
        json.writeEndObject();
        if (row) {
            layout.endRow();
        }
    }

    private void field(Slot slot, Object value) {
        switch (slot.kind()) {
            case RECORD -> record(Shape.of(slot.type()), value);
            case RECORDS -> {
                json.writeStartArray();
                Shape<?> shape = Shape.of(slot.type());
                ((List<?>) value).forEach(item -> record(shape, item));
                json.writeEndArray();
            }
            case SCALARS -> {
                layout.startRow();
                json.writeStartArray();
                ((List<?>) value).forEach(this::scalar);
                json.writeEndArray();
                layout.endRow();
            }
            case DATUM -> datum((Datum<?>) value);
            default -> scalar(value);
        }
    }

    private void datum(Datum<?> datum) {
        if (!(datum instanceof Datum.Known<?> known)) {
            json.writeString(Marks.write(datum));
        } else if (known.origin() == Origin.LIST && known.date().isEmpty()) {
            scalar(known.value());
        } else {
            layout.startRow();
            json.writeStartObject();
            json.writeName("value");
            scalar(known.value());
            if (known.origin() != Origin.LIST) {
                json.writeStringProperty("origin", known.origin().word());
            }
            if (!known.date().isEmpty()) {
                json.writeStringProperty("date", known.date());
            }
            json.writeEndObject();
            layout.endRow();
        }
    }

    private void scalar(Object value) {
        if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value instanceof Double || value instanceof Integer || (value instanceof Awg a && a.gauge() > 0)) {
            json.writeNumber(Scalars.write(value));
        } else {
            json.writeString(Scalars.write(value));
        }
    }
}
