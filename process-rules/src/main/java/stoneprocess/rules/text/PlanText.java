package stoneprocess.rules.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Step;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.source.Card;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;

/**
 * A recommendation as a text that a floor technician carries onto the site. Never parse it: the recommendation holds
 * the same as data. Immutable and safe to share between threads.
 */
public final class PlanText {
    private static final int QUESTIONS_THAT_MATTER_MOST = 3;
    private static final List<String> TOPICS_EXPLAINED = List.of(
            Topics.STONE.id(),
            Topics.VERDICT.id(),
            Topics.FINISH.id(),
            Topics.BONDS.id(),
            Topics.FIRST_CUT.id(),
            Topics.LAST_GRIT.id(),
            Topics.STEP_RULE.id(),
            Topics.TRANSITION.id(),
            Topics.POLISHING_AGENT.id(),
            Topics.DENSIFIER.id(),
            Topics.SEALER.id());

    private final UnitSystem units;
    private final RuleWords cards;

    /**
     * @param units the reader's units
     * @param cards the cards of the rulebase that made the recommendations
     */
    public PlanText(UnitSystem units, Collection<Card> cards) {
        this.units = units;
        this.cards = new RuleWords(cards);
    }

    /** The text of a recommendation, lines of at most 96 characters, ending with a line feed. */
    public String render(Recommendation recommendation, Detail detail) {
        return new Writer(recommendation).write(detail);
    }

    private final class Writer {
        private final Recommendation recommendation;
        private final Phrases phrases;
        private final Page page = new Page();
        private final StepWords words;
        private final Cautions cautions;

        private Writer(Recommendation recommendation) {
            this.recommendation = recommendation;
            this.phrases = new Phrases(units, recommendation.parameters());
            this.words = new StepWords(units, phrases);
            this.cautions = new Cautions(phrases, page);
        }

        private String write(Detail detail) {
            page.title(recommendation.survey().title());
            page.line(summary());
            refusals();
            verdict();
            impasses();
            questions(detail);
            cautions.warnings(recommendation.warnings(), detail);
            recommendation.plan().ifPresent(this::plan);
            if (detail == Detail.FULL) {
                reasons();
            }
            cautions.close(recommendation.rulebase());
            return page.toString();
        }

        private String summary() {
            String status = phrases.of(recommendation.status());
            Optional<Plan> plan = recommendation.plan();
            if (plan.isEmpty()) {
                return status;
            }
            if (plan.get().tracks().isEmpty()) {
                boolean cleaned = recommendation
                        .values(Topics.FIRST_CUT, Subject.OPEN_FIELD)
                        .isEmpty();
                return status + " " + phrases.get(cleaned ? "summary.nothing-is-cut" : "summary.no-cut-yet");
            }
            Track first = plan.get().tracks().get(0);
            List<Step> steps = first.steps();
            String path = String.join(
                    ", ", steps.stream().map(step -> words.grade(step.grade())).toList());
            return status + " "
                    + String.format(
                            phrases.get(first.kind() == TrackKind.OPEN_FIELD ? "summary.cuts" : "summary.field-stays"),
                            plan.get().finish().map(phrases::of).orElse(""),
                            path);
        }

        private void refusals() {
            if (recommendation.status() != Status.REFUSED) {
                return;
            }
            page.heading(phrases.get("refusal.heading"));
            recommendation.refusals().forEach(reason -> page.item(cards.because(reason.rule())));
            offers();
        }

        /** Why a plan waits or cuts nothing; what rests on an unknown fact is told by the questions. */
        private void verdict() {
            boolean waits = recommendation.status() != Status.PLANNED && recommendation.status() != Status.REFUSED;
            boolean nothingCut = recommendation.status() == Status.PLANNED
                    && recommendation.plan().orElseThrow().tracks().isEmpty();
            List<String> certain = recommendation.decision(Topics.VERDICT, Subject.FLOOR).stream()
                    .flatMap(decision -> decision.won().stream())
                    .filter(Reason::certain)
                    .map(Reason::rule)
                    .distinct()
                    .toList();
            if ((waits || nothingCut) && !certain.isEmpty()) {
                page.heading(phrases.get(waits ? "verdict.waits" : "verdict.nothing-cut"));
                certain.forEach(rule -> page.item(cards.because(rule)));
            }
        }

        private void impasses() {
            if (recommendation.status() != Status.IMPASSE && recommendation.status() != Status.UNDECIDED) {
                return;
            }
            for (Impasse impasse : blocking()) {
                page.heading(String.format(phrases.get("impasse.heading"), topic(impasse.topic())));
                demands("impasse.needs", impasse.needs());
                demands("impasse.vetoes", impasse.vetoes());
                if (impasse.topic().equals(Topics.GRIT_PATH.id())) {
                    page.item(phrases.get("impasse.no-path"));
                }
                if (impasse.untilKnown()) {
                    page.item(phrases.get("impasse.until-known"));
                }
            }
            offers();
        }

        private void offers() {
            page.heading(phrases.get("offers.heading"));
            recommendation.counterOffers().forEach(offer -> page.item(offer(offer)));
        }

        private List<Impasse> blocking() {
            Map<List<Object>, Impasse> distinct = new LinkedHashMap<>();
            recommendation.impasses().stream()
                    .filter(impasse -> Topics.named(impasse.topic()).isBlocking())
                    .forEach(impasse -> distinct.putIfAbsent(
                            List.of(
                                    impasse.topic(),
                                    RuleWords.rules(impasse.needs()),
                                    RuleWords.rules(impasse.vetoes())),
                            impasse));
            return List.copyOf(distinct.values());
        }

        private void demands(String key, List<Reason> reasons) {
            reasons.stream()
                    .map(Reason::rule)
                    .distinct()
                    .forEach(rule -> page.item(phrases.get(key) + " " + cards.because(rule)));
        }

        private String offer(CounterOffer offer) {
            String value = offer.values().isEmpty() ? "" : " " + offered(offer);
            return phrases.of(offer.kind()) + value + " " + phrases.get("offers.gives-up") + " "
                    + phrases.of(offer.kind(), "gives-up");
        }

        private String offered(CounterOffer offer) {
            if (offer.kind() == OfferKind.GET_GRADES) {
                String grades = String.join(", ", offer.values()).replace('-', ' ');
                return String.format(phrases.get("offers.missing"), grades);
            }
            List<String> names = offer.values().stream()
                    .map(key -> value(offer.topic(), key))
                    .toList();
            if (offer.kind() == OfferKind.OTHER_MACHINE) {
                return String.format(phrases.get("offers.any-of"), String.join(", ", names));
            }
            String limit = offer.kind() == OfferKind.KEEP_THE_MARKS ? "offers.no-coarser" : "offers.up-to";
            return String.format(phrases.get(limit), names.get(0));
        }

        private void questions(Detail detail) {
            List<Question> questions = recommendation.questions();
            if (questions.isEmpty()) {
                return;
            }
            int shown =
                    detail == Detail.FULL ? questions.size() : Math.min(QUESTIONS_THAT_MATTER_MOST, questions.size());
            page.heading(
                    shown == questions.size()
                            ? phrases.get("questions.heading")
                            : String.format(phrases.get("questions.some"), shown, questions.size()));
            questions.subList(0, shown).forEach(question -> page.item(question(question)));
        }

        private String question(Question question) {
            String how = question.field().equals("readings")
                    ? phrases.get("question.how-readings")
                    : question.field().startsWith("damages.")
                            ? phrases.get("question.how-damages")
                            : phrases.of(SurveyField.named(question.field()).howFound());
            List<String> rules = question.rules().isEmpty() ? question.waiting() : question.rules();
            String reading = question.rules().isEmpty() ? "question.waiting" : "question.cautious";
            return phrases.get("field." + question.field()) + " " + how + " "
                    + String.format(phrases.get(reading), cards.title(weightiest(rules)));
        }

        /** The rule whose topic closes first. */
        private String weightiest(List<String> rules) {
            List<String> topics = Topics.all().stream().map(Topic::id).toList();
            return rules.stream()
                    .filter(rule -> cards.card(rule).isPresent())
                    .min(Comparator.comparing(
                            rule -> order(cards.card(rule).orElseThrow().topic(), topics)))
                    .orElse(rules.get(0));
        }

        /** Going ahead comes before everything else, what the stone is included. */
        private static int order(String topic, List<String> topics) {
            return topic.equals(Topics.VERDICT.id()) ? -1 : topics.indexOf(topic);
        }

        private void plan(Plan plan) {
            list("acceptances.heading", plan.acceptances());
            preparation(plan);
            list("repairs.heading", plan.repairs());
            if (plan.testArea() == TestArea.REQUIRED) {
                page.heading(phrases.get("test-area.heading"));
                page.item(phrases.of(plan.testArea()));
                testCuts(plan.testCuts());
                boolean slip = plan.tracks().stream()
                        .flatMap(track -> track.steps().stream())
                        .anyMatch(step -> step.checks().contains(Check.WET_SLIP));
                if (slip) {
                    page.item(phrases.of(Check.WET_SLIP));
                }
                recommendation.survey().readings().forEach(reading -> page.item(baseline(reading)));
            }
            list("shortfalls.heading", plan.shortfalls());
            if (!plan.tracks().isEmpty()) {
                cuts(plan);
            }
            list("slurry.heading", plan.slurry());
            page.heading(phrases.get("finishing.heading"));
            if (plan.polishingAgent() != PolishingAgent.NONE) {
                page.item(phrases.of(plan.polishingAgent()));
            }
            finishTasks(plan, task -> task.compareTo(FinishTask.MEASURE_SLIP) < 0);
            boolean later = plan.finishTasks().contains(FinishTask.SEAL_LATER);
            if (!later) {
                page.item(phrases.of(plan.sealer()));
            }
            if (!later && plan.sealer() == Sealer.IMPREGNATOR) {
                page.item(phrases.of(plan.sealer(), "check"));
            }
            finishTasks(plan, task -> task.compareTo(FinishTask.MEASURE_SLIP) >= 0);
            list("upkeep.heading", plan.upkeep());
        }

        private String baseline(GlossReading reading) {
            return String.format(
                    phrases.get("test-area.baseline"),
                    reading.zone(),
                    units.print(reading.gloss()),
                    reading.geometry().degrees(),
                    phrases.of(reading.state()));
        }

        /** What is measured and handed over is the sealed floor. */
        private void finishTasks(Plan plan, Predicate<FinishTask> which) {
            plan.finishTasks().stream().filter(which).forEach(task -> page.item(phrases.of(task)));
        }

        private void list(String heading, List<? extends Term> terms) {
            if (!terms.isEmpty()) {
                page.heading(phrases.get(heading));
                page.items(terms.stream().map(phrases::of).toList());
            }
        }

        private void preparation(Plan plan) {
            List<Preparation> tasks = plan.preparation();
            boolean densified = plan.densifier() == Densifier.BEFORE_CUTS;
            if (tasks.isEmpty() && !densified) {
                return;
            }
            page.heading(phrases.get("preparation.heading"));
            for (int i = 0; i < tasks.size(); i++) {
                String rest = tasks.get(i)
                        .rest()
                        .map(span -> " " + String.format(phrases.get("preparation.wait"), units.print(span)))
                        .orElse("");
                page.numbered(i + 1, phrases.of(tasks.get(i).task()) + rest);
            }
            if (densified) {
                page.numbered(tasks.size() + 1, phrases.of(plan.densifier()));
            }
        }

        private void testCuts(List<AbrasiveGrade> grades) {
            if (grades.size() > 1) {
                page.item(String.format(
                        phrases.get("test-area.cuts"), words.grade(grades.get(0)), words.grade(grades.get(1))));
            }
        }

        private void cuts(Plan plan) {
            List<Step> all = plan.tracks().stream()
                    .flatMap(track -> track.steps().stream())
                    .toList();
            List<Handling> always = common(all, Step::handling);
            List<Check> alwaysChecked = common(all, Step::checks);
            page.heading(phrases.get("always.heading"));
            page.items(always.stream().map(phrases::of).toList());
            page.item(phrases.get("always.passes"));
            page.item(phrases.get("always.hold") + " " + phrases.sentence(alwaysChecked));
            page.item(phrases.get("always.fails"));
            if (plan.densifier() == Densifier.AFTER_FINE_HONE) {
                page.item(phrases.of(plan.densifier()));
            }
            for (Track track : plan.tracks()) {
                page.heading(phrases.of(track.kind()));
                List<Handling> here = without(common(track.steps(), Step::handling), always);
                page.items(here.stream().map(phrases::of).toList());
                Set<Term> told = new LinkedHashSet<>(always);
                told.addAll(here);
                told.addAll(alwaysChecked);
                for (int i = 0; i < track.steps().size(); i++) {
                    step(i + 1, track.kind(), track.steps().get(i), told);
                }
            }
        }

        /** What holds for every step. */
        private static <T> List<T> common(List<Step> steps, Function<Step, List<T>> part) {
            return part.apply(steps.get(0)).stream()
                    .filter(term ->
                            steps.stream().allMatch(step -> part.apply(step).contains(term)))
                    .toList();
        }

        private static <T> List<T> without(List<T> terms, Collection<?> told) {
            return terms.stream().filter(term -> !told.contains(term)).toList();
        }

        private void step(int number, TrackKind track, Step step, Set<Term> told) {
            String dry = step.method() == WorkMethod.DRY ? ", " + phrases.get("step.dry") : "";
            page.numbered(
                    number,
                    words.grade(step.grade()) + ", " + phrases.of(step.machine()) + ", " + words.weight(step) + dry);
            page.labelled("     ", phrases.get("step.water"), words.water(track, step));
            page.labelled("     ", phrases.get("step.passes"), words.passes(step));
            List<Handling> work = without(step.handling(), told);
            if (!work.isEmpty()) {
                page.labelled("     ", phrases.get("step.work"), phrases.sentence(work));
            }
            page.labelled("     ", phrases.get("step.after"), phrases.of(step.pickUp()));
            List<Check> checks = without(step.checks(), told);
            if (!checks.isEmpty()) {
                page.labelled("     ", phrases.get("step.hold"), phrases.sentence(checks));
            }
        }

        private void reasons() {
            page.heading(phrases.get("reasons.heading"));
            for (Outcome outcome : recommendation.outcomes()) {
                if (outcome instanceof Decision decision
                        && (outcome.subject().equals(Subject.FLOOR) || isWorked(outcome))
                        && TOPICS_EXPLAINED.contains(outcome.topic())) {
                    reason(decision);
                }
            }
        }

        private boolean isWorked(Outcome outcome) {
            return outcome.topic().equals(Topics.FIRST_CUT.id())
                    && recommendation.plan().stream()
                            .flatMap(plan -> plan.tracks().stream())
                            .anyMatch(track -> outcome.subject().equals(new Subject.OfTrack(track.kind())));
        }

        private void reason(Decision decision) {
            List<String> values = decision.values().stream()
                    .map(key -> value(decision.topic(), key))
                    .toList();
            page.item(topic(decision.topic()) + ": " + String.join(", ", values) + ".");
            List<String> rules = RuleWords.rules(decision.won());
            if (rules.isEmpty()) {
                page.labelled("      ", "", phrases.get("reasons.nothing-said"));
            }
            rules.forEach(rule -> page.labelled("      ", rule, cards.because(rule)));
            RuleWords.rules(decision.outweighed())
                    .forEach(rule -> page.labelled(
                            "      ", rule, phrases.get("reasons.outweighed") + " " + cards.title(rule) + "."));
            RuleWords.rules(decision.vetoed())
                    .forEach(rule -> page.labelled(
                            "      ", rule, phrases.get("reasons.vetoed") + " " + cards.title(rule) + "."));
        }

        private String topic(String id) {
            return phrases.get("topic." + id);
        }

        private String value(String topic, String key) {
            return Topics.named(topic).domain().stream()
                    .filter(term -> term.key().equals(key))
                    .map(term -> shortName(term))
                    .findFirst()
                    .orElse(key);
        }

        /** A word for lists: a name of its own where the bundle has one, else the phrase itself. */
        private String shortName(Term term) {
            String key = Phrases.key(term) + ".name";
            return Phrases.has(key) ? phrases.get(key) : phrases.of(term);
        }
    }

    /** The texts that a recommendation needs and that do not come from an enum; a test keeps the bundle complete. */
    static List<String> fixedKeys() {
        List<String> keys = new ArrayList<>(List.of(
                "acceptances.heading",
                "always.fails",
                "always.heading",
                "always.hold",
                "always.passes",
                "closing.deference",
                "closing.heading",
                "closing.rulebase",
                "finishing.heading",
                "impasse.heading",
                "impasse.needs",
                "impasse.no-path",
                "impasse.until-known",
                "impasse.vetoes",
                "offers.gives-up",
                "offers.heading",
                "offers.up-to",
                "preparation.heading",
                "question.cautious",
                "question.how-damages",
                "question.waiting",
                "questions.heading",
                "questions.some",
                "reasons.heading",
                "reasons.nothing-said",
                "reasons.outweighed",
                "reasons.vetoed",
                "refusal.heading",
                "repairs.heading",
                "slurry.heading",
                "preparation.wait",
                "question.how-readings",
                "summary.field-stays",
                "summary.no-cut-yet",
                "test-area.cuts",
                "field.readings",
                "offers.any-of",
                "offers.missing",
                "offers.no-coarser",
                "shortfalls.heading",
                "step.dry",
                "step.after",
                "step.hold",
                "step.litres",
                "step.no-area",
                "step.passes",
                "step.passes-text",
                "step.water",
                "step.work",
                "summary.cuts",
                "summary.nothing-is-cut",
                "test-area.baseline",
                "test-area.heading",
                "upkeep.heading",
                "verdict.nothing-cut",
                "verdict.waits",
                "warnings.controls",
                "warnings.decider-is",
                "warnings.decides",
                "warnings.exposed",
                "warnings.heading",
                "warnings.limit",
                "warnings.limit-is",
                "warnings.source",
                "warnings.uncertain"));
        Topics.all().forEach(topic -> keys.add("topic." + topic.id()));
        return keys;
    }
}
