package ringout.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Step;
import ringout.model.edit.Edit;
import ringout.model.edit.EditLine;
import ringout.model.edit.Path;
import ringout.model.edit.Told;
import ringout.model.shape.Scalars;
import ringout.text.Span;

/**
 * What a change of the list asks of the build plan: a step that says the old value says the new one, a lead taken out is made
 * in no step, a new lead is made with those that end where it ends. Without it a repair would put list and plan at odds.
 */
final class PlanFollows {
    private static final int SAME_PLUG = 3;

    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, List<String>> objects = new LinkedHashMap<>();
    private final List<Edit> says = new ArrayList<>();
    private final Aircraft aircraft;

    private PlanFollows(Aircraft aircraft) {
        this.aircraft = aircraft;
        for (Step step : aircraft.record().steps()) {
            steps.put(step.id(), step);
            objects.put(step.id(), new ArrayList<>(step.objects()));
        }
    }

    /** The edits with those of the plan behind them; the same edits where they touch the plan themselves or there is none. */
    static List<Edit> with(Aircraft aircraft, List<Edit> edits) {
        boolean own = edits.stream().anyMatch(edit -> first(edit).field().equals("record"));
        if (own || aircraft.record().steps().isEmpty()) {
            return edits;
        }
        PlanFollows plan = new PlanFollows(aircraft);
        edits.forEach(plan::follow);
        List<Edit> all = new ArrayList<>(edits);
        all.addAll(plan.says);
        all.addAll(plan.moved());
        return all;
    }

    private static Path.Step first(Edit edit) {
        return edit.path().steps().get(0);
    }

    private void follow(Edit edit) {
        Path.Step first = first(edit);
        String name = first.pick().key();
        if (edit instanceof Edit.Set set && first.field().equals("units")) {
            int last = set.path().steps().size() - 1;
            told(name, set.path().steps().get(last).field(), value(set.value()));
        } else if (edit instanceof Edit.Remove && made(first.field())) {
            objects.values().forEach(list -> list.removeIf(name::equalsIgnoreCase));
        } else if (edit instanceof Edit.Add add && add.item() instanceof Lead lead) {
            made(lead);
        }
    }

    private static boolean made(String list) {
        return list.equals("leads") || list.equals("joints") || list.equals("units");
    }

    private static String value(Object value) {
        return value instanceof Datum.Known<?> known ? Scalars.write(known.value()) : "";
    }

    /** A step about this unit alone says the new value; of several units the one goes to the step that says it already. */
    private void told(String unit, String field, String value) {
        for (Step step : steps.values()) {
            if (about(step, field)
                    && step.objects().contains(unit)
                    && !step.says().or("").equalsIgnoreCase(value)) {
                if (step.objects().size() == 1) {
                    set(step, "says", value);
                } else {
                    list(step).remove(unit);
                    steps.values().stream()
                            .filter(other -> about(other, field)
                                    && other.says().or("").equalsIgnoreCase(value)
                                    && !list(other).contains(unit))
                            .findFirst()
                            .ifPresent(other -> list(other).add(unit));
                }
            }
        }
    }

    private static boolean about(Step step, String field) {
        return step.says().isKnown() && step.attribute().or("").equalsIgnoreCase(field);
    }

    private List<String> list(Step step) {
        return objects.computeIfAbsent(step.id(), id -> new ArrayList<>());
    }

    private void made(Lead lead) {
        steps.values().stream()
                .filter(step -> step.action().or("").equals("make") && near(step, lead) > 0)
                .min(Comparator.comparingInt(step -> -near(step, lead)))
                .ifPresent(step -> list(step).add(lead.id()));
    }

    private int near(Step step, Lead lead) {
        int near = 0;
        for (Lead other : aircraft.leads()) {
            if (step.objects().contains(other.id())) {
                near = Math.max(near, near(lead.from(), other) + near(lead.to(), other));
            }
        }
        return near;
    }

    private static int near(End end, Lead other) {
        return Math.max(near(end, other.from()), near(end, other.to()));
    }

    private static int near(End one, End other) {
        if (one.text().equalsIgnoreCase(other.text())) {
            return SAME_PLUG;
        }
        return unit(one).equals(unit(other)) ? 1 : 0;
    }

    private static String unit(End end) {
        int dash = end.text().indexOf('-');
        return end.text().substring(0, dash < 0 ? end.text().length() : dash).toLowerCase(Locale.ROOT);
    }

    private List<Edit> moved() {
        List<Edit> edits = new ArrayList<>();
        for (Step step : steps.values()) {
            List<String> now = list(step);
            if (!now.equals(step.objects())) {
                if (now.isEmpty()) {
                    edits.add(new Edit.Remove(Span.NONE, path(step)));
                } else {
                    parse("set " + path(step).then("objects") + " " + String.join(" ", now), edits);
                }
            }
        }
        return edits;
    }

    private void set(Step step, String field, String value) {
        parse("set " + path(step).then(field) + " " + value, says);
    }

    private static void parse(String line, List<Edit> edits) {
        if (EditLine.parse(line, Span.NONE) instanceof Told.Right<Edit> right) {
            edits.add(right.value());
        }
    }

    private static Path path(Step step) {
        return Path.of("record").then("steps").at(step.id());
    }
}
