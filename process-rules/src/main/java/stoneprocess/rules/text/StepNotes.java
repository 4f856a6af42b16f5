package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Track;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.StatedValue;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** How the steps of a plan are worked: what holds at every grit, and what holds at some, each said once. */
final class StepNotes {
    private final PlanWords words;
    private final List<Track> tracks;
    private final List<AbrasiveGrade> grades;

    StepNotes(Plan plan, PlanWords words) {
        this.words = words;
        this.tracks = plan.tracks();
        this.grades = places().map(place -> place.step().grade())
                .distinct()
                .sorted(AbrasiveGrade.IN_ORDER)
                .toList();
    }

    /** A step of a track. */
    private record Place(Track track, PlannedStep step) {
        StatedValue stating(Topic<?> topic, Term term) {
            return new StatedValue(topic, PlanWords.subject(track.kind(), step), term.key());
        }
    }

    /** The grits of all tracks in the order of the work. */
    List<AbrasiveGrade> grades() {
        return grades;
    }

    boolean isOneMachine(Track track) {
        return track.steps().stream().map(PlannedStep::machine).distinct().count() == 1;
    }

    /** The step of the first track that has the grit, which the table shows. */
    PlannedStep shown(AbrasiveGrade grade) {
        return tracks.stream()
                .flatMap(track -> StepTable.step(track, grade).stream())
                .findFirst()
                .orElseThrow();
    }

    /** That the paths of tracks go over the grit. */
    List<StatedValue> pathsOver(AbrasiveGrade grade) {
        return at(grade, step -> true)
                .map(place -> new StatedValue(
                        Topics.GRIT_PATH, new Subject.OfTrack(place.track().kind()), grade.key()))
                .toList();
    }

    /** The grit after which the densifier goes on, for one that goes on before the cuts a second time; empty for none. */
    Optional<AbrasiveGrade> densifiedAfter(Densifier densifier) {
        List<AbrasiveGrade> led =
                tracks.get(0).steps().stream().map(PlannedStep::grade).toList();
        Optional<AbrasiveGrade> last = Optional.of(led.get(led.size() - 1));
        return switch (densifier) {
            case BEFORE_CUTS, AFTER_FINE_HONE ->
                led.stream()
                        .filter(grade -> grade.bond() == Bond.RESIN && grade.number() >= Cut.FINE_HONE.number())
                        .findFirst()
                        .or(() -> last);
            case AFTER_LAST_GRIT -> last;
            case NONE -> Optional.empty();
        };
    }

    boolean isReduced() {
        return places().anyMatch(place -> place.step().weight() == AddedWeight.REDUCED);
    }

    /** True where the water of a pass over the whole floor is told. */
    boolean hasLitres() {
        return tracks.get(0).steps().stream()
                .anyMatch(step -> step.litresPerPass().isPresent());
    }

    List<Check> alwaysChecked() {
        return common(PlannedStep::checks);
    }

    /** What holds at every step, each with what it states. */
    <T extends Term> List<Wording> always(Topic<?> topic, Function<PlannedStep, List<T>> part) {
        return common(part).stream()
                .<Wording>map(term -> new Wording.Stating(stated(places(), topic, term), words.of(term)))
                .toList();
    }

    /** Pits are grouted once, after a grit and not during it, also where there is one grit alone. */
    private <T> List<T> common(Function<PlannedStep, List<T>> part) {
        return part.apply(tracks.get(0).steps().get(0)).stream()
                .filter(term -> term != Handling.REGROUT_PITS)
                .filter(term ->
                        places().allMatch(place -> part.apply(place.step()).contains(term)))
                .toList();
    }

    private Stream<Place> at(AbrasiveGrade grade, Predicate<PlannedStep> which) {
        return places().filter(place -> place.step().grade().equals(grade) && which.test(place.step()));
    }

    private static List<StatedValue> stated(Stream<Place> places, Topic<?> topic, Term term) {
        return places.map(place -> place.stating(topic, term)).toList();
    }

    private Stream<Place> places() {
        return tracks.stream().flatMap(track -> track.steps().stream().map(step -> new Place(track, step)));
    }

    /** The steps on all tracks that have the grit and the water of one. */
    List<StatedValue> sameWater(PlannedStep shown) {
        return stated(at(shown.grade(), step -> step.water() == shown.water()), Topics.WATER_LEVEL, shown.water());
    }

    /** The steps on all tracks that have the grade of one, and the check. */
    List<StatedValue> sameCheck(PlannedStep shown, Check check) {
        return stated(at(shown.grade(), step -> step.checks().contains(check)), Topics.CHECKS, check);
    }

    /** The checks of a step that the table does not tell. */
    private List<Check> checksBesideTable(PlannedStep step) {
        List<Check> told = shown(step.grade()).checks();
        return step.checks().stream().filter(check -> !told.contains(check)).toList();
    }

    /** True where the table tells of a reading. */
    boolean isGlossRead() {
        return grades.stream()
                .flatMap(grade -> shown(grade).checks().stream())
                .anyMatch(EnumSet.of(Check.READ_20, Check.READ_60, Check.READ_85)::contains);
    }

    /** The tools of each track that the table does not tell. */
    Wording tools() {
        Notes tools = new Notes();
        Track lead = tracks.get(0);
        List<Track> others = tracks.subList(1, tracks.size());
        List<Track> machines = isOneMachine(lead) ? tracks : others;
        tools.add(Topics.MACHINE, machines, step -> List.of(step.machine()), step -> Wording.of(step.machine()));
        tools.add(Topics.ADDED_WEIGHT, others, step -> List.of(step.weight()), StepWords::weight);
        return Wording.list(Joint.SENTENCES, tools.words("notes.tools", Joint.COMMA));
    }

    /** What holds at some steps, each place with all that holds there. */
    List<Wording> sometimes() {
        Notes notes = new Notes();
        notes.addSometimes(Topics.HANDLING, PlannedStep::handling);
        notes.addSometimes(Topics.PICK_UP, step -> List.of(step.pickUp()));
        notes.addSometimes(Topics.CHECKS, this::checksBesideTable);
        for (Track track : tracks.subList(1, tracks.size())) {
            notes.add(
                    Topics.WATER_LEVEL,
                    List.of(track),
                    step -> isAsInTable(step) ? List.of() : List.of(step.water()),
                    step -> phrase("notes.water").with("level", step.water()));
        }
        return notes.words("notes.where", Joint.SENTENCES);
    }

    private boolean isAsInTable(PlannedStep step) {
        return shown(step.grade()).water() == step.water();
    }

    /** Words under the places where they hold. */
    private final class Notes {
        private final Map<Wording, List<Wording>> byPlace = new LinkedHashMap<>();

        <T extends Term> void addSometimes(Topic<?> topic, Function<PlannedStep, List<T>> part) {
            List<T> always = common(part);
            Set<T> terms = new LinkedHashSet<>();
            places().forEach(place -> terms.addAll(part.apply(place.step())));
            terms.stream()
                    .filter(term -> !always.contains(term))
                    .forEach(term -> add(
                            topic,
                            tracks,
                            step -> part.apply(step).contains(term) ? List.of(term) : List.of(),
                            step -> words.of(term)));
        }

        <T extends Term> void add(
                Topic<?> topic,
                List<Track> within,
                Function<PlannedStep, List<T>> part,
                Function<PlannedStep, Wording> words) {
            Map<Wording, List<Place>> places = new LinkedHashMap<>();
            places().filter(place -> within.contains(place.track()))
                    .filter(place -> !part.apply(place.step()).isEmpty())
                    .forEach(place -> places.computeIfAbsent(words.apply(place.step()), key -> new ArrayList<>())
                            .add(place));
            places.forEach((said, at) -> {
                List<StatedValue> stated = at.stream()
                        .map(place ->
                                place.stating(topic, part.apply(place.step()).get(0)))
                        .toList();
                byPlace.computeIfAbsent(where(at), key -> new ArrayList<>()).add(new Wording.Stating(stated, said));
            });
        }

        List<Wording> words(String key, Joint joint) {
            return byPlace.entrySet().stream()
                    .<Wording>map(note ->
                            phrase(key).with("where", note.getKey()).with("what", Wording.list(joint, note.getValue())))
                    .toList();
        }
    }

    /** The grits alone where every track that has them is meant, else track by track. */
    private Wording where(List<Place> places) {
        List<AbrasiveGrade> meant = grades.stream()
                .filter(grade ->
                        places.stream().anyMatch(place -> place.step().grade().equals(grade)))
                .toList();
        long having =
                places().filter(place -> meant.contains(place.step().grade())).count();
        if (having == places.size() && meant.size() < grades.size()) {
            return where(meant, grades);
        }
        List<Wording> parts = new ArrayList<>();
        Joint joint = Joint.COMMA;
        for (Track track : tracks) {
            List<AbrasiveGrade> ofTrack = places.stream()
                    .filter(place -> place.track() == track)
                    .map(place -> place.step().grade())
                    .toList();
            if (ofTrack.size() == track.steps().size()) {
                parts.add(ValueWords.track(track.kind()));
            } else if (!ofTrack.isEmpty()) {
                joint = Joint.SEMICOLON;
                List<AbrasiveGrade> all =
                        track.steps().stream().map(PlannedStep::grade).toList();
                parts.add(phrase("notes.on-track")
                        .with("track", ValueWords.track(track.kind()))
                        .with("grades", where(ofTrack, all)));
            }
        }
        return Wording.list(joint, parts);
    }

    private static Wording where(List<AbrasiveGrade> meant, List<AbrasiveGrade> all) {
        Wording first = ValueWords.grade(meant.get(0));
        Wording last = ValueWords.grade(meant.get(meant.size() - 1));
        int start = all.indexOf(meant.get(0));
        boolean together = meant.equals(all.subList(start, Math.min(all.size(), start + meant.size())));
        if (meant.size() > 1 && together && start + meant.size() == all.size()) {
            return phrase("notes.from").with("grade", first);
        }
        if (meant.size() > 1 && together && start == 0) {
            return phrase("notes.up-to").with("grade", last);
        }
        return Wording.list(Joint.COMMA, meant, ValueWords::grade);
    }
}
