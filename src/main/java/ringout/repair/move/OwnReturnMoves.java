package ringout.repair.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.model.Joint;
import ringout.model.Lead;
import ringout.model.PinMap;
import ringout.model.edit.Edit;
import ringout.model.edit.Path;
import ringout.text.Span;

/**
 * A splice of returns taken out: each unit on it gets its return in the lead that feeds it, on the contact of the same
 * number, and the leads to the splice go.
 */
final class OwnReturnMoves implements Move {
    @Override
    public Stream<Candidate> around(Fault fault) {
        return fault.aircraft().joints().stream()
                .filter(joint -> fault.leads().stream().anyMatch(lead -> ends(lead, joint)))
                .flatMap(joint -> dissolved(fault, joint).stream());
    }

    private static boolean ends(Lead lead, Joint joint) {
        return lead.from().text().equalsIgnoreCase(joint.id())
                || lead.to().text().equalsIgnoreCase(joint.id());
    }

    private static Optional<Candidate> dissolved(Fault fault, Joint joint) {
        List<Lead> gone = fault.directory().leads().stream()
                .filter(lead -> ends(lead, joint))
                .toList();
        List<Edit> edits = new ArrayList<>();
        for (Lead lead : gone) {
            String far = lead.from().text().equalsIgnoreCase(joint.id())
                    ? lead.to().text()
                    : lead.from().text();
            own(fault, gone, lead, far, edits);
        }
        if (edits.isEmpty()) {
            return Optional.empty();
        }
        gone.forEach(lead -> edits.add(new Edit.Remove(Span.NONE, Move.lead(lead.id()))));
        edits.add(new Edit.Remove(Span.NONE, Path.of("joints").at(joint.id())));
        return Optional.of(new Candidate(edits.stream().distinct().toList(), Costs.CONTACT * gone.size()));
    }

    /** The contact goes into another lead of the same plug whose wires all lead to one plug. */
    private static void own(Fault fault, List<Lead> gone, Lead lead, String far, List<Edit> edits) {
        int dash = far.lastIndexOf('-');
        String plug = far.substring(0, Math.max(0, dash));
        String pin = far.substring(dash + 1);
        fault.directory().leads().stream()
                .filter(other -> !gone.contains(other))
                .filter(other ->
                        other.from().text().equals(plug) || other.to().text().equals(plug))
                .filter(other ->
                        other.pins().known().filter(map -> free(map, pin)).isPresent())
                .findFirst()
                .ifPresent(other -> {
                    List<PinMap.Pair> pairs =
                            new ArrayList<>(other.pins().known().orElseThrow().pairs());
                    pairs.add(new PinMap.Pair(pin, pin));
                    Move.set(Move.lead(other.id()).then("pins"), new PinMap(pairs).toString())
                            .ifPresent(edits::add);
                    coloured(lead, other, pin).ifPresent(edits::add);
                });
    }

    private static boolean free(PinMap map, String pin) {
        return map.pairs().stream()
                .noneMatch(pair -> pair.from().equals(pin) || pair.to().equals(pin));
    }

    /** The colour of the wire that goes is that of the wire that comes. */
    private static Optional<Edit> coloured(Lead gone, Lead other, String pin) {
        String colour = gone.colours().or("");
        int equals = colour.indexOf('=');
        return equals < 0 || colour.contains(" ")
                ? Optional.empty()
                : Move.set(
                        Move.lead(other.id()).then("colours"),
                        (other.colours().or("") + " " + pin + colour.substring(equals)).strip());
    }
}
