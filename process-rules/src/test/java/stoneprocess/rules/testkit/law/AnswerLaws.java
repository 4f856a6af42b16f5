package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** Laws about the form of an answer: what it has to say whatever it advises. */
final class AnswerLaws {
    static final Law STATUS_FITS = Breaches.law(
            "status-fits-the-answer",
            "A plan stands exactly where the floor is planned or provisional; a refusal names a reason, cuts nothing and"
                    + " needs no plan; an impasse names the topic that cannot be closed",
            "Whoever reads the status alone must not be misled about the rest",
            answer -> true,
            AnswerLaws::statusFits);

    static final Law REFUSAL_IS_CERTAIN = Breaches.law(
            "refusal-rests-on-what-is-known",
            "Each reason of a refusal asks to refuse and rests on known facts alone",
            "A floor that might be dangerous is held and asked about; a refusal says that it is",
            answer -> answer.status() == Status.REFUSED,
            (answer, breaches) -> answer.refusals()
                    .forEach(reason -> breaches.require(
                            reason.certain() && reason.values().contains(Verdict.REFUSE),
                            Topics.VERDICT,
                            "a certain reason to refuse",
                            reason)));

    static final Law HOLD_IS_EXPLAINED = Breaches.law(
            "hold-is-explained",
            "What is held or undecided because of an unknown fact asks a question that names the rule, or has the stone"
                    + " tested where what is known of it does not agree",
            "A crew that waits must know for what",
            answer -> answer.status() == Status.PROVISIONAL || answer.status() == Status.UNDECIDED,
            AnswerLaws::holdIsExplained);

    static final Law IMPASSE_OFFERS_A_WAY_OUT = Breaches.law(
            "impasse-offers-a-way-out",
            "An impasse names who demands, who excludes or what is lacking, and there is a counter-offer; so there is for a"
                    + " refusal; no plan that is not held carries one",
            "No is not an answer that an owner can act on",
            answer -> !answer.impasses().isEmpty() || answer.status() == Status.REFUSED,
            AnswerLaws::wayOut);

    private static final Set<String> TESTS = Set.of(
            SurveyField.STONE_NAME.name(),
            SurveyField.IDENTIFIED_BY.name(),
            SurveyField.ACID_DROP.name(),
            SurveyField.SCRIBER.name());

    /** Answers that can contradict each other and are then asked for again. */
    private static final Set<String> CONTRADICTORY = Set.of(
            SurveyField.ACID_DROP.name(),
            SurveyField.COATING.name(),
            SurveyField.SOLVENT_RAG.name(),
            SurveyField.WATER_DROP.name(),
            SurveyField.CEMENT_SURFACE.name(),
            SurveyField.LAST_TREATMENT.name(),
            SurveyField.FACE.name(),
            SurveyField.TILE_EDGE.name(),
            SurveyField.FINISH_NOW.name());

    static final Law QUESTION_IS_OPEN = Breaches.lawByRules(
            "question-is-open",
            "A question names a field of the survey once, one that the survey leaves open, and a rule that asks; name, acid"
                    + " and scriber are asked again where they contradict each other, a name also where a plan is held or stuck,"
                    + " acid, coating, rag, water drop, surface, finish, face, size of pieces and last treatment where the work is on hold for what they contradict",
            "Nobody answers twice but for a contradiction, and nobody answers what no rule reads",
            answer -> !answer.questions().isEmpty(),
            AnswerLaws::openQuestions);

    static final Law VALUES_ARE_OF_THE_DOMAIN = Breaches.law(
            "values-are-of-the-domain",
            "Every topic is closed once for a subject, with values of its domain, each once, in the domain's order where"
                    + " several stand side by side, and exactly one where one is chosen",
            "What a caller switches over is finite",
            answer -> true,
            AnswerLaws::ofTheDomain);

    static final Law RECORD_EXPLAINS_THE_OUTCOME = Breaches.law(
            "record-explains-the-outcome",
            "No need that won leaves the value out, no veto takes it in, a value of a list was asked for, a wish counts as"
                    + " vetoed only where something excludes what it wants most",
            "The closed decision is the explanation; nobody explains it a second time",
            answer -> true,
            AnswerLaws::recordExplains);

    static final Law SAFETY_RULES_STAND = Breaches.lawByRules(
            "safety-rules-stand",
            "No safety rule is vetoed, and none is outweighed but by a more cautious value",
            "A house or a taste must not silence what keeps people whole",
            answer -> !answer.warnings().isEmpty(),
            AnswerLaws::safetyStands);

    static final Law EVERY_KEY_HAS_TEXT = Breaches.lawByRules(
            "every-key-has-text",
            "Every value that an answer holds has its words, and the answer can be written out in either system of units",
            "A crew reads sentences, not keys",
            answer -> true,
            AnswerLaws::hasText);

    static final Law OFFER_TAKEN_IS_KEPT = new Law(
            "offer-taken-is-kept",
            "Whoever gets all the grades that an impasse lacks is not at that impasse again",
            "A counter-offer that does not help costs money and trust",
            Law.Meeting.where(
                    answer -> answer.counterOffers().stream().anyMatch(offer -> offer.kind() == OfferKind.GET_GRADES)),
            AnswerLaws::offerKept);

    static final List<Law> ALL = List.of(
            STATUS_FITS,
            REFUSAL_IS_CERTAIN,
            HOLD_IS_EXPLAINED,
            IMPASSE_OFFERS_A_WAY_OUT,
            QUESTION_IS_OPEN,
            VALUES_ARE_OF_THE_DOMAIN,
            RECORD_EXPLAINS_THE_OUTCOME,
            SAFETY_RULES_STAND,
            EVERY_KEY_HAS_TEXT,
            OFFER_TAKEN_IS_KEPT);

    private static final String QUESTION = "questions";

    private AnswerLaws() {}

    private static void statusFits(Recommendation answer, Breaches breaches) {
        Status status = answer.status();
        breaches.require(
                answer.plan().isPresent() == Breaches.isPlanned(answer),
                Topics.VERDICT,
                "a plan exactly where it is planned or provisional",
                status.key());
        boolean refused = status == Status.REFUSED;
        breaches.require(
                answer.refusals().isEmpty() != refused,
                Topics.VERDICT,
                "reasons of a refusal exactly where it is refused",
                status.key() + " " + answer.refusals());
        boolean blocked =
                answer.impasses().stream().anyMatch(impasse -> impasse.topic().isBlocking());
        boolean stuck = status == Status.IMPASSE || status == Status.UNDECIDED;
        breaches.require(blocked || !stuck, Topics.VERDICT, "a topic that cannot be closed", answer.impasses());
        boolean cuts = answer.outcomes().stream().anyMatch(outcome -> outcome.topic() == Topics.GRIT_PATH);
        breaches.require(!(refused && cuts), Topics.GRIT_PATH, "nothing cut where it is refused", "a path");
    }

    private static void holdIsExplained(Recommendation answer, Breaches breaches) {
        List<Reason> waits = new ArrayList<>();
        if (answer.status() == Status.PROVISIONAL) {
            List<Reason> held = answer.decision(Topics.VERDICT, Subject.FLOOR)
                    .map(Decision::won)
                    .orElse(List.of());
            breaches.require(!held.isEmpty(), Topics.VERDICT, "a reason to hold", "none");
            waits.addAll(held);
        }
        if (answer.status() == Status.UNDECIDED) {
            answer.impasses().stream()
                    .filter(impasse -> impasse.topic().isBlocking())
                    .forEach(impasse -> {
                        waits.addAll(impasse.needs());
                        waits.addAll(impasse.vetoes());
                    });
        }
        boolean contradicted = answer.impasses().stream().anyMatch(impasse -> impasse.topic() == Topics.STONE);
        boolean tested =
                contradicted && answer.values(Topics.PREPARATION, Subject.FLOOR).contains(Task.TEST_STONE);
        for (Reason reason : waits) {
            boolean asked = answer.questions().stream()
                    .anyMatch(question -> question.rules().contains(reason.rule()) || concluded(reason));
            breaches.require(
                    reason.certain() || asked || tested,
                    Topics.VERDICT,
                    "a question that names " + reason.rule(),
                    answer.questions().stream().map(Question::field).toList());
        }
    }

    /** True where what is not known was concluded from other topics, whose rules ask. */
    private static boolean concluded(Reason reason) {
        return reason.facts().stream()
                .filter(fact -> !fact.known())
                .noneMatch(fact -> fact.topics().isEmpty());
    }

    private static void wayOut(Recommendation answer, Breaches breaches) {
        for (Impasse<?> impasse : answer.impasses()) {
            boolean named = !impasse.needs().isEmpty()
                    || !impasse.vetoes().isEmpty()
                    || !impasse.lacking().isEmpty()
                    || impasse.topic() == Topics.GRIT_PATH;
            breaches.require(named, impasse.topic(), impasse.subject(), "a cause", impasse);
        }
        List<CounterOffer<?>> offers = answer.counterOffers().stream()
                .filter(offer -> !Breaches.isPlanned(answer) || offer.topic() != Topics.ACCEPTANCES)
                .toList();
        breaches.require(
                answer.status() == Status.PROVISIONAL || offers.isEmpty() == Breaches.isPlanned(answer),
                Topics.VERDICT,
                "counter-offers exactly where there is no plan, or perhaps where it is held or something is to be accepted",
                answer.status().key() + " " + offers);
    }

    private static void openQuestions(List<LoadedRule> rules, Recommendation answer, Breaches breaches) {
        Set<String> ids = rules.stream().map(LoadedRule::id).collect(Collectors.toSet());
        Set<String> asked = new HashSet<>();
        for (Question question : answer.questions()) {
            String field = question.field();
            if (!Forgetting.names().contains(field) || closed(answer, field) || !asked.add(field)) {
                breaches.add(QUESTION, Subject.FLOOR, "open questions, each once", field);
            }
            List<String> asking = Stream.concat(question.rules().stream(), question.waiting().stream())
                    .toList();
            if (asking.isEmpty() || !ids.containsAll(asking)) {
                breaches.add(QUESTION, Subject.FLOOR, "rules that ask for " + field, asking);
            }
        }
    }

    /** True where it is answered and the stone gives no reason to ask again. */
    private static boolean closed(Recommendation answer, String field) {
        boolean contradicted = answer.impasses().stream().anyMatch(impasse -> impasse.topic() == Topics.STONE);
        boolean stuck = !answer.impasses().isEmpty()
                || answer.values(Topics.VERDICT, Subject.FLOOR).contains(Verdict.HOLD);
        boolean again = contradicted && TESTS.contains(field)
                || stuck && (field.equals(SurveyField.STONE_NAME.name()) || CONTRADICTORY.contains(field));
        return answered(answer.survey(), field) && !again;
    }

    /** True where the survey settles it: a field that is answered, a kind of damage that is told of all of the floor. */
    private static boolean answered(FloorSurvey survey, String name) {
        Optional<DamageKind> damage = Stream.of(DamageKind.values())
                .filter(kind -> Facts.damage(kind).equals(name))
                .findFirst();
        if (damage.isPresent()) {
            double covered = survey.zones().stream()
                    .mapToDouble(zone -> zone.share().percent())
                    .sum();
            return covered >= 99.9999
                    && survey.zones().stream()
                            .allMatch(zone -> zone.damage(damage.get())
                                    .value()
                                    .filter(found -> isWhole(damage.get(), found))
                                    .isPresent());
        }
        return !name.equals(Facts.READINGS)
                && survey.answer(SurveyField.named(name)).isKnown();
    }

    /** None; or a look and a share, with a depth where one can be measured. */
    private static boolean isWhole(DamageKind kind, Damage found) {
        boolean measured = kind.depthScale().isEmpty() || found.depth().isPresent();
        return found.look().equals(Optional.of(kind.none())) || found.share().isPresent() && measured;
    }

    private static void ofTheDomain(Recommendation answer, Breaches breaches) {
        Set<Object> closed = new HashSet<>();
        for (Outcome outcome : answer.outcomes()) {
            Topic<?> topic = outcome.topic();
            breaches.require(
                    closed.add(List.of(outcome.topic(), outcome.subject())),
                    topic,
                    outcome.subject(),
                    "closed once",
                    "closed twice");
            if (!(outcome instanceof Decision<?> decision) || topic.domain().isEmpty()) {
                continue;
            }
            List<String> values = decision.keys();
            List<String> domain = Term.keys(topic.domain());
            List<String> expected = topic.policy() == PolicyKind.RANKED
                    ? values.stream().distinct().filter(domain::contains).toList()
                    : domain.stream().filter(values::contains).toList();
            breaches.require(values.equals(expected), topic, decision.subject(), "values of " + domain, values);
            boolean single = topic.policy() == PolicyKind.ONE
                    || topic.policy() == PolicyKind.PRECEDENCE
                    || topic.policy() == PolicyKind.FEWEST_CHANGES;
            breaches.require(!single || values.size() == 1, topic, decision.subject(), "one value", values);
        }
    }

    private static void recordExplains(Recommendation answer, Breaches breaches) {
        for (Outcome outcome : answer.outcomes()) {
            if (outcome instanceof Decision<?> decision
                    && !outcome.topic().domain().isEmpty()) {
                recordExplains(decision, breaches);
            }
        }
    }

    private static void recordExplains(Decision<?> decision, Breaches breaches) {
        Topic<?> topic = decision.topic();
        boolean narrowed = topic.policy() == PolicyKind.ONE
                || topic.policy() == PolicyKind.REMAINS
                || topic.policy() == PolicyKind.FEWEST_CHANGES;
        for (Reason reason : decision.won()) {
            boolean holds = switch (reason.kind()) {
                case NEED -> !narrowed || reason.keys().containsAll(decision.keys());
                case VETO -> decision.values().stream().noneMatch(reason.values()::contains);
                case WISH -> topic.policy() != PolicyKind.ONE || reason.keys().containsAll(decision.keys());
            };
            breaches.require(holds, topic, decision.subject(), "a value that fits " + reason, decision.keys());
        }
        if (topic.policy() == PolicyKind.ALL) {
            for (String value : decision.keys()) {
                boolean asked = decision.won().stream()
                        .anyMatch(reason -> reason.kind() != ContributionKind.VETO
                                && reason.keys().contains(value));
                breaches.require(asked, topic, decision.subject(), "a rule that asks for " + value, decision.won());
            }
        }
        for (Reason reason : decision.vetoed()) {
            boolean excluded = decision.won().stream().anyMatch(other -> other != reason && excludes(other, reason));
            breaches.require(excluded, topic, decision.subject(), "what excludes " + reason, decision.won());
        }
    }

    private static boolean excludes(Reason reason, Reason wish) {
        return switch (reason.kind()) {
            case NEED -> !reason.values().containsAll(wish.values());
            case VETO -> reason.values().stream().anyMatch(wish.values()::contains);
            case WISH -> false;
        };
    }

    private static void safetyStands(List<LoadedRule> rules, Recommendation answer, Breaches breaches) {
        Set<String> locked = rules.stream()
                .map(LoadedRule::card)
                .filter(Card::locked)
                .map(Card::id)
                .collect(Collectors.toSet());
        for (Outcome outcome : answer.outcomes()) {
            if (!(outcome instanceof Decision<?> decision)) {
                continue;
            }
            Topic<?> topic = decision.topic();
            decision.vetoed().stream()
                    .filter(reason -> locked.contains(reason.rule()))
                    .forEach(reason -> breaches.add(topic.id(), decision.subject(), "heeded", reason));
            decision.outweighed().stream()
                    .filter(reason -> locked.contains(reason.rule()))
                    .filter(reason -> rank(topic, decision.keys()) > rank(topic, reason.keys()))
                    .forEach(reason -> breaches.add(topic.id(), decision.subject(), "nothing bolder", reason));
        }
    }

    private static int rank(Topic<?> topic, List<String> values) {
        return Term.keys(topic.domain()).indexOf(values.get(0));
    }

    private static void hasText(List<LoadedRule> rules, Recommendation answer, Breaches breaches) {
        Set<String> missing = new HashSet<>();
        for (Outcome outcome : answer.outcomes()) {
            if (outcome instanceof Decision<?> decision) {
                Topic<?> topic = decision.topic();
                decision.keys().stream()
                        .filter(value -> !topic.domain().isEmpty() && !hasPhrase(topic.domain(), value))
                        .forEach(value -> missing.add(topic.id() + " " + value));
            }
        }
        missing.forEach(key -> breaches.add(Topics.VERDICT, "words for " + key, "none"));
        if (!missing.isEmpty()) {
            return;
        }
        List<Card> cards = rules.stream().map(LoadedRule::card).toList();
        for (UnitSystem units : UnitSystem.values()) {
            try {
                Texts.english().in(units).page(new PlanText(cards).document(answer, Detail.FULL));
            } catch (InvalidInputException e) {
                breaches.add(Topics.VERDICT, "words", String.valueOf(e.getMessage()));
            }
        }
    }

    private static boolean hasPhrase(Collection<? extends Term> domain, String key) {
        return domain.stream()
                .anyMatch(term -> term.key().equals(key) && Language.english().has(Wording.key(term)));
    }

    private static List<Violation> offerKept(Respondent respondent, FloorSurvey survey, long seed) {
        Recommendation answer = respondent.recommend(survey);
        Breaches breaches = new Breaches("offer-taken-is-kept", survey);
        List<AbrasiveGrade> grades =
                new ArrayList<>(survey.answer(SurveyField.GRADES).value().orElse(List.of()));
        int before = grades.size();
        answer.counterOffers().stream()
                .filter(offer -> offer.kind() == OfferKind.GET_GRADES)
                .flatMap(offer -> offer.keys().stream())
                .map(key -> answer.sequence().get(key, "offer"))
                .filter(grade -> !grades.contains(grade))
                .forEach(grades::add);
        if (grades.size() > before) {
            FloorSurvey got = survey.toBuilder().set(SurveyField.GRADES, grades).build();
            respondent.recommend(got).impasses().stream()
                    .filter(impasse -> impasse.topic() == Topics.GRIT_PATH)
                    .forEach(impasse -> breaches.add(impasse.topic(), impasse.subject(), "a path", impasse));
        }
        return breaches.found();
    }
}
