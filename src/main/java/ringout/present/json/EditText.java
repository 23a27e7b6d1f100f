package ringout.present.json;

import ringout.model.edit.Edit;
import ringout.model.edit.Place;
import ringout.model.edit.Told;
import ringout.model.shape.CellForm;
import ringout.model.shape.Slot;

/** Edits as the lines of text they can be read from again. */
public final class EditText {
    private EditText() {}

    /**
     * One edit as one line, without a line end.
     *
     * @throws IllegalArgumentException when its value has no form on one line, such as a remark of several lines
     */
    public static String of(Edit edit) {
        if (edit instanceof Edit.Add add) {
            return "add " + add.path() + " " + AircraftJson.line(add.item());
        }
        return edit instanceof Edit.Set set ? set(set) : "remove " + edit.path();
    }

    private static String set(Edit.Set set) {
        if (!(Place.of(set.path()) instanceof Told.Right<Place> place)) {
            throw new IllegalArgumentException("no such field: " + set.path());
        }
        Slot slot = place.value().slot();
        String text = CellForm.write(slot, set.value())
                .orElseThrow(() -> new IllegalArgumentException(
                        "`" + slot.name() + "` cannot be written on one line: " + set.value()));
        return text.isEmpty() ? "clear " + set.path() : "set " + set.path() + " " + text;
    }
}
