package stoneprocess.rules.cases;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.follow.Cause;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Ask;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Finding;
import stoneprocess.core.topic.Mend;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.SiteCheck;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.internal.review.LogReview;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** One case of a floor in work, or of a fault, as it stands in its file; the form is described beside the files. */
record FollowCase(String name, ObjectNode json) {
    private static final Set<String> PARTS =
            Set.of("title", "source", "reasoning", "base", "survey", "log", "signs", "look-alike", "expect", "changed");

    static List<FollowCase> all(String folder) {
        return ExpertCase.files(folder).stream()
                .map(file -> new FollowCase(ExpertCase.name(file), ExpertCase.read(file)))
                .toList();
    }

    @Override
    public String toString() {
        return name;
    }

    String source() {
        return json.get("source").asString();
    }

    /** Signs asked about, beside those that the log tells. */
    Set<Sign> asked() {
        return terms(Sign.class, json.path("signs"));
    }

    /** The case with the same sign and another cause; empty when it names none. */
    Optional<String> lookAlike() {
        return json.has("look-alike")
                ? Optional.of("diagnose/" + json.get("look-alike").asString())
                : Optional.empty();
    }

    /** Causes that are to lead. */
    Set<Fault> leading() {
        return expected("leading", "leads");
    }

    /** True when the case expects other causes to lead. */
    boolean otherThan(Fault fault) {
        boolean only = json.get("expect").has("leading") && !leading().contains(fault);
        return only || expected("not-leading", "no-causes", "excluded").contains(fault);
    }

    private Set<Fault> expected(String... kinds) {
        EnumSet<Fault> faults = EnumSet.noneOf(Fault.class);
        for (String kind : kinds) {
            faults.addAll(terms(Fault.class, json.get("expect").path(kind)));
        }
        return faults;
    }

    /** Terms that the case expects under a name. */
    <E extends Enum<E> & Term> Set<E> wanted(Class<E> type, String kind) {
        return terms(type, json.get("expect").path(kind));
    }

    /** Notes that the case expects on entries of the log. */
    Set<NoteKind> notes() {
        EnumSet<NoteKind> kinds = EnumSet.noneOf(NoteKind.class);
        json.get("expect")
                .path("notes")
                .properties()
                .forEach(entry -> kinds.addAll(terms(NoteKind.class, entry.getValue())));
        return kinds;
    }

    Recommendation plan(Advisor advisor) {
        return advisor.recommend(ExpertCase.survey(json));
    }

    JobLog log() {
        ObjectNode log = json.objectNode().put("format", JobLog.FORMAT);
        log.set("title", json.get("title"));
        log.set("entries", json.get("log"));
        return Json.JOB_LOG.read(log.toString());
    }

    /** The log beside its plan, or the signs where the case lies among the faults. */
    LogReview review(Advisor advisor) {
        return name.startsWith("diagnose/")
                ? LogReview.of(plan(advisor), log(), asked())
                : LogReview.of(plan(advisor), log());
    }

    /** The answer to the log, or to the signs where the case lies among the faults. */
    NextMove answer(Advisor advisor) {
        return name.startsWith("diagnose/")
                ? advisor.diagnose(plan(advisor), asked(), log()).remedy()
                : advisor.followUp(plan(advisor), log());
    }

    /** Where the answer is not what the case expects; none when it is. */
    List<String> misses(NextMove answer) {
        List<String> misses = new ArrayList<>();
        json.propertyNames().stream()
                .filter(part -> !PARTS.contains(part))
                .forEach(part -> misses.add("the case has an unknown part " + part));
        if (!json.get("expect").has("move")
                && expected("leading", "leads", "causes", "excluded", "not-leading", "no-causes")
                        .isEmpty()) {
            misses.add("the case expects neither a move nor a cause");
        }
        json.get("expect")
                .properties()
                .forEach(entry -> new Expectation(answer, misses).check(entry.getKey(), entry.getValue()));
        return misses;
    }

    private static <E extends Enum<E> & Term> Set<E> terms(Class<E> type, JsonNode node) {
        EnumSet<E> terms = EnumSet.noneOf(type);
        texts(node).forEach(text -> terms.add(Term.parse(type, text, "case")));
        return terms;
    }

    private static List<String> texts(JsonNode node) {
        if (node.isMissingNode()) {
            return List.of();
        }
        return node.isArray()
                ? node.values().stream().map(JsonNode::asString).toList()
                : Arrays.asList(node.asString());
    }

    private record Expectation(NextMove answer, List<String> misses) {
        private void check(String kind, JsonNode wanted) {
            switch (kind) {
                case "move" -> oneOf("move", terms(Move.class, wanted), answer.move());
                case "at" ->
                    same(
                            "at",
                            wanted.asString(),
                            answer.at()
                                    .map(point -> point.track().key() + "/"
                                            + point.grade().key())
                                    .orElse("before the first pass"));
                case "findings" -> holds(kind, terms(Finding.class, wanted), answer.findings());
                case "no-findings" -> lacks(kind, terms(Finding.class, wanted), answer.findings());
                case "checks" -> holds(kind, terms(SiteCheck.class, wanted), answer.checks());
                case "mends" -> holds(kind, terms(Mend.class, wanted), answer.mends());
                case "no-mends" -> lacks(kind, terms(Mend.class, wanted), answer.mends());
                case "asks" -> holds(kind, terms(Ask.class, wanted), answer.asks());
                case "no-asks" -> lacks(kind, terms(Ask.class, wanted), answer.asks());
                case "more-passes" ->
                    same(
                            kind,
                            texts(wanted),
                            answer.morePasses()
                                    .map(range -> List.of(
                                            range.low().toString(), range.high().toString()))
                                    .orElse(List.of()));
                case "notes" -> wanted.properties().forEach(entry -> notes(entry.getKey(), entry.getValue()));
                case "no-notes" -> lacks(kind, terms(NoteKind.class, wanted), kinds());
                case "contradictions" -> holds(kind, texts(wanted), contradicted());
                case "unknown" -> holds(kind, texts(wanted), answer.unknown());
                case "leading" -> same(kind, terms(Fault.class, wanted), faults(Standing.LEADING));
                case "leads" -> holds(kind, terms(Fault.class, wanted), faults(Standing.LEADING));
                case "not-leading" -> lacks(kind, terms(Fault.class, wanted), faults(Standing.LEADING));
                case "causes" -> holds(kind, terms(Fault.class, wanted), faults(Standing.LEADING, Standing.POSSIBLE));
                case "no-causes" ->
                    lacks(kind, terms(Fault.class, wanted), faults(Standing.LEADING, Standing.POSSIBLE));
                case "excluded" -> holds(kind, terms(Fault.class, wanted), faults(Standing.EXCLUDED));
                case "ahead" -> misses.addAll(Expectations.misses(answer.ahead(), wanted));
                default -> misses.add("the case has an unknown expectation " + kind);
            }
        }

        /** Fields of the answers that the surveyor is asked to look at again. */
        private List<String> contradicted() {
            return answer.outcomes().stream()
                    .filter(outcome -> outcome.topic() == Topics.ASKS)
                    .flatMap(outcome -> outcome.reasons().stream())
                    .filter(reason -> reason.values().contains(Ask.SURVEYOR))
                    .flatMap(reason -> reason.facts().stream())
                    .flatMap(fact -> fact.fields().stream())
                    .distinct()
                    .toList();
        }

        private Set<Fault> faults(Standing... standings) {
            EnumSet<Fault> faults = EnumSet.noneOf(Fault.class);
            answer.causes().stream()
                    .filter(cause -> List.of(standings).contains(cause.standing()))
                    .map(Cause::fault)
                    .forEach(faults::add);
            return faults;
        }

        private void notes(String position, JsonNode wanted) {
            holds(
                    "notes on entry " + position,
                    terms(NoteKind.class, wanted),
                    answer.notes().stream()
                            .filter(note -> note.entry() == Integer.parseInt(position))
                            .map(LogNote::kind)
                            .toList());
        }

        private List<NoteKind> kinds() {
            return answer.notes().stream().map(LogNote::kind).toList();
        }

        private void oneOf(String what, Set<? extends Term> wanted, Term is) {
            if (!wanted.contains(is)) {
                misses.add(what + ": wanted " + Term.keys(wanted) + ", is " + is.key());
            }
        }

        private void same(String what, Object wanted, Object is) {
            if (!wanted.equals(is)) {
                misses.add(what + ": wanted " + wanted + ", is " + is);
            }
        }

        private void holds(String what, Set<? extends Term> wanted, Collection<? extends Term> is) {
            holds(what, Term.keys(wanted), Term.keys(is));
        }

        private void holds(String what, List<String> wanted, List<String> is) {
            wanted.stream()
                    .filter(value -> !is.contains(value))
                    .forEach(value -> misses.add(what + ": lacks " + value + ", is " + is));
        }

        private void lacks(String what, Set<? extends Term> unwanted, Collection<? extends Term> is) {
            unwanted.stream().filter(is::contains).forEach(term -> misses.add(what + ": has " + term.key()));
        }
    }
}
