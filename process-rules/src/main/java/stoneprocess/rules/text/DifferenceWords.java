package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.answer.Closing;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Given;
import stoneprocess.core.answer.MatterDifference;
import stoneprocess.core.answer.Side;
import stoneprocess.core.answer.Split;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/**
 * What differs between two recommendations, in words. How a grit is worked that only one of them has is left to its plan,
 * and so is what only one of them reaches.
 */
final class DifferenceWords {
    private static final int HASH_SHOWN = 12;
    private static final Set<Topic<?>> IN_SECTIONS_OF_THEIR_OWN =
            Set.of(Topics.GRIT_PATH, Topics.LAST_GRIT, Topics.PREPARATION, Topics.WARNINGS);

    private DifferenceWords() {}

    /**
     * @param totals what the jobs of both need in all, line by line; none where it is not asked for
     */
    static Document full(Wording title, Difference difference, List<Wording> totals, Parameters parameters) {
        Draft draft =
                Draft.titled(title, parameters).inOneLine(brief(difference)).paragraph(summary(difference));
        draft.list("difference.answers", answers(difference.answers()), Function.identity());
        draft.list("difference.totals", totals, Function.identity());
        draft.list("difference.grits", grits(difference), Function.identity());
        draft.list("difference.matters", matters(difference), Function.identity());
        split(
                draft,
                "difference.preparation",
                Joint.COMMA,
                difference.preparation(),
                planned -> ValueWords.name(planned.task()));
        split(draft, "difference.warnings", Joint.COMMA, difference.warnings(), warning -> {
            Wording hazard = ValueWords.name(warning.hazard());
            return warning.certain() ? hazard : Wording.sentences(hazard, phrase("warnings.uncertain"));
        });
        split(draft, "difference.questions", Joint.SENTENCES, difference.questions(), FieldWords::question);
        split(
                draft,
                "difference.offers",
                Joint.SENTENCES,
                difference.counterOffers(),
                offer -> Wording.of(offer.kind()));
        draft.list("difference.parameters", difference.parameters(), Wording::name);
        split(
                draft,
                "difference.rulebases",
                Joint.COMMA,
                difference.rulebases(),
                hash -> Wording.name(hash.substring(0, HASH_SHOWN)));
        return draft.document();
    }

    private static Wording summary(Difference difference) {
        if (difference.sameAdvice()) {
            return phrase("difference.none");
        }
        return difference.one() == difference.other()
                ? phrase("difference.same-status").with("status", difference.one())
                : phrase("difference.status").with("first", difference.one()).with("second", difference.other());
    }

    /** Each question once, with what both surveys answer; not what is the same in zones that only have other names. */
    private static List<Wording> answers(Split<FieldAnswer> answers) {
        List<Wording> words = new ArrayList<>();
        Split<String> zones = Split.of(zones(answers.one()), zones(answers.other()));
        if (!zones.one().isEmpty() && !zones.other().isEmpty()) {
            words.add(phrase("difference.zones").with("change", instead(names(zones.other()), names(zones.one()))));
        }
        boolean renamed = !zones.isEmpty();
        Stream.concat(answers.one().stream(), answers.other().stream())
                .map(FieldAnswer::field)
                .distinct()
                .filter(field -> !renamed || !saysTheSame(said(answers.one(), field), said(answers.other(), field)))
                .forEach(field -> words.add(Wording.sentences(
                        FieldWords.question(field),
                        instead(answer(answers.other(), field), answer(answers.one(), field)))));
        return words;
    }

    private static Wording names(List<String> zones) {
        return Wording.list(Joint.COMMA, zones, Wording::name);
    }

    private static List<String> zones(List<FieldAnswer> answers) {
        return answers.stream()
                .flatMap(answer -> answer.given().stream())
                .flatMap(given -> given.zone().stream())
                .distinct()
                .toList();
    }

    /** Whether as many zones say the same, or all zones of both say one thing. */
    private static boolean saysTheSame(List<Given> one, List<Given> other) {
        boolean counted = one.size() == other.size() && Split.of(one, other).isEmpty();
        Set<Given> all = Stream.concat(one.stream(), other.stream()).collect(Collectors.toSet());
        return counted || !one.isEmpty() && !other.isEmpty() && all.size() == 1;
    }

    /** What is said to a question, wherever. */
    private static List<Given> said(List<FieldAnswer> answers, String field) {
        return answers.stream()
                .filter(answer -> answer.field().equals(field))
                .flatMap(answer -> answer.given().stream())
                .map(given -> new Given(Optional.empty(), given.keys(), given.amounts()))
                .toList();
    }

    private static Wording answer(List<FieldAnswer> answers, String field) {
        return answers.stream()
                .filter(answer -> answer.field().equals(field))
                .findFirst()
                .map(FieldWords::answer)
                .orElse(phrase("fact.nobody-knows"));
    }

    private static Wording instead(Wording second, Wording first) {
        return phrase("difference.instead").with("second", second).with("first", first);
    }

    private static <T> void split(Draft draft, String heading, Joint joint, Split<T> split, Function<T, Wording> word) {
        Split<Wording> words = Split.of(
                split.one().stream().map(word).distinct().toList(),
                split.other().stream().map(word).distinct().toList());
        if (!words.isEmpty()) {
            draft.section(heading);
        }
        boolean sentences = joint == Joint.SENTENCES;
        only(sentences ? "difference.gone-sentences" : "difference.gone", joint, words.one())
                .ifPresent(draft::bullet);
        only(sentences ? "difference.new-sentences" : "difference.new", joint, words.other())
                .ifPresent(draft::bullet);
    }

    private static Optional<Wording> only(String key, Joint joint, List<Wording> words) {
        return words.isEmpty() ? Optional.empty() : Optional.of(phrase(key).with("what", Wording.list(joint, words)));
    }

    /** The grits of each side; tracks that change alike in one line. */
    private static List<Wording> grits(Difference difference) {
        Map<List<List<String>>, List<Wording>> tracks = new LinkedHashMap<>();
        difference
                .tracks()
                .forEach(track -> tracks.computeIfAbsent(
                                List.of(track.one(), track.other()), grades -> new ArrayList<>())
                        .add(ValueWords.track(track.track())));
        return tracks.entrySet().stream()
                .<Wording>map(entry -> phrase("difference.matter")
                        .with("matter", Wording.list(Joint.COMMA, entry.getValue()))
                        .with(
                                "change",
                                instead(
                                        grades(entry.getKey().get(1)),
                                        grades(entry.getKey().get(0)))))
                .toList();
    }

    private static Wording grades(List<String> grades) {
        return grades.isEmpty() ? phrase("difference.not-worked") : ValueWords.grades(grades);
    }

    /** What both sides decide, and otherwise; places where it changes alike in one line. */
    private static List<Wording> matters(Difference difference) {
        Map<Change, List<Wording>> places = new LinkedHashMap<>();
        changed(difference).stream()
                .filter(matter ->
                        !IN_SECTIONS_OF_THEIR_OWN.contains(matter.matter().topic()))
                .forEach(matter -> places.computeIfAbsent(change(matter), change -> new ArrayList<>())
                        .add(ValueWords.subject(matter.matter().subject())));
        return places.entrySet().stream()
                .<Wording>map(
                        entry -> phrase(entry.getKey().partly() ? "difference.matter-partly" : "difference.matter")
                                .with("matter", matter(entry.getKey().topic(), entry.getValue()))
                                .with("change", entry.getKey().words()))
                .toList();
    }

    /** How a topic changes, be it in a part of its values only. */
    private record Change(Wording topic, Wording words, boolean partly) {}

    private static Wording matter(Wording topic, List<Wording> places) {
        boolean whole = places.equals(List.of(ValueWords.subject(Subject.FLOOR)));
        return whole
                ? topic
                : phrase("value.matter").with("topic", topic).with("subject", Wording.list(Joint.SEMICOLON, places));
    }

    private static Change change(MatterDifference matter) {
        Topic<?> topic = matter.matter().topic();
        boolean partly = topic.policy().isPlural()
                && matter.one().closing() == Closing.DECIDED
                && matter.other().closing() == Closing.DECIDED;
        return new Change(
                ValueWords.topic(topic),
                partly ? partly(matter.one(), matter.other()) : instead(side(matter.other()), side(matter.one())),
                partly);
    }

    /** Of many values only those that one side alone has. */
    private static Wording partly(Side<?> one, Side<?> other) {
        Split<Wording> split = Split.of(names(one), names(other));
        List<Wording> words = new ArrayList<>();
        only("difference.added", Joint.COMMA, split.other()).ifPresent(words::add);
        only("difference.dropped", Joint.COMMA, split.one()).ifPresent(words::add);
        return Wording.list(Joint.SEMICOLON, words);
    }

    private static List<Wording> names(Side<?> side) {
        return side.values().stream()
                .map(value -> ValueWords.name((Term) value))
                .toList();
    }

    private static List<MatterDifference> changed(Difference difference) {
        return difference.matters().stream()
                .filter(MatterDifference::changed)
                .filter(matter -> matter.one().closing() != Closing.NOT_REACHED
                        && matter.other().closing() != Closing.NOT_REACHED)
                .toList();
    }

    private static <V> Wording side(Side<V> side) {
        return AnswerWords.ending(side.topic(), side.closing(), side.values(), side.rules());
    }

    private static Wording brief(Difference difference) {
        List<MatterDifference> changed = changed(difference);
        if (changed.isEmpty()) {
            return phrase(difference.sameAdvice() ? "difference.none" : "difference.same-matters");
        }
        MatterDifference first = changed.get(0);
        Wording matter =
                ValueWords.matter(first.matter().topic(), first.matter().subject());
        return AnswerWords.shortest(
                phrase("difference.brief")
                        .with("count", changed.size())
                        .with("matter", matter)
                        .with("change", instead(side(first.other()), side(first.one()))),
                phrase("difference.brief-matter").with("count", changed.size()).with("matter", matter));
    }
}
