package ringout.present.json;

import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;

/**
 * The layout of an aircraft's file, made for comparing versions line by line: a record that is one row of a list stands on
 * one line, whatever is in it; what holds such lists is spread over lines.
 */
public final class RecordLayout extends ObjectWriteContext.Base implements PrettyPrinter {
    private static final String STEP = "  ";

    private int depth;
    private int rows;

    /** What follows stands on one line, until {@link #endRow}. */
    public void startRow() {
        rows++;
    }

    /** Ends what {@link #startRow} began. */
    public void endRow() {
        rows--;
    }

    private void line(JsonGenerator json) {
        if (rows == 0) {
            json.writeRaw('\n' + STEP.repeat(depth));
        }
    }

    @Override
    public PrettyPrinter getPrettyPrinter() {
        return this;
    }

    @Override
    public boolean hasPrettyPrinter() {
        return true;
    }

    @Override
    public void writeRootValueSeparator(JsonGenerator json) {
        json.writeRaw('\n');
    }

    @Override
    public void writeStartObject(JsonGenerator json) {
        json.writeRaw('{');
        depth++;
    }

    @Override
    public void writeEndObject(JsonGenerator json, int entries) {
        depth--;
        if (entries > 0) {
            line(json);
        }
        json.writeRaw('}');
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator json) {
        json.writeRaw(rows == 0 ? "," : ", ");
        line(json);
    }

    @Override
    public void writeObjectNameValueSeparator(JsonGenerator json) {
        json.writeRaw(": ");
    }

    @Override
    public void writeStartArray(JsonGenerator json) {
        json.writeRaw('[');
        depth++;
    }

    @Override
    public void writeEndArray(JsonGenerator json, int values) {
        depth--;
        if (values > 0) {
            line(json);
        }
        json.writeRaw(']');
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator json) {
        json.writeRaw(rows == 0 ? "," : ", ");
        line(json);
    }

    @Override
    public void beforeArrayValues(JsonGenerator json) {
        line(json);
    }

    @Override
    public void beforeObjectEntries(JsonGenerator json) {
        line(json);
    }
}
