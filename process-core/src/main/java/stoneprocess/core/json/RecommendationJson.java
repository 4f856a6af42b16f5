package stoneprocess.core.json;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.HouseRule;
import stoneprocess.core.plan.HouseRuleKind;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Precaution;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Step;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Subject;

/** Recommendations as JSON: lossless, versioned, the same bytes on every machine. */
public final class RecommendationJson {
    private static final String WHAT = "recommendation";

    private RecommendationJson() {}

    /**
     * Prints a recommendation. Grades of the plan and the survey are printed as keys of its sequence.
     *
     * @throws InvalidInputException when its sequence lacks one of these grades, so that it could not be read back
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(Recommendation recommendation) {
        return Jackson.with(() -> Tree.print(tree(recommendation)));
    }

    /**
     * Reads a recommendation back; it equals the one that was printed. Every parameter has to stand in it: a number that
     * is missing is never taken from the shipped set, since nobody would know which one the plan was made with.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static Recommendation read(String json) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT))));
    }

    static Map<String, Object> tree(Recommendation recommendation) {
        requireOwnGrades(recommendation);
        return new Fields()
                .put("format", Recommendation.FORMAT)
                .put("status", recommendation.status().key())
                .putIf("plan", recommendation.plan().map(PlanJson::tree))
                .put("refusals", Fields.list(recommendation.refusals(), RecommendationJson::tree))
                .put("warnings", Fields.list(recommendation.warnings(), RecommendationJson::tree))
                .put("questions", Fields.list(recommendation.questions(), RecommendationJson::tree))
                .put("counter-offers", Fields.list(recommendation.counterOffers(), RecommendationJson::tree))
                .put("outcomes", Fields.list(recommendation.outcomes(), RecommendationJson::tree))
                .put("survey", SurveyJson.tree(recommendation.survey()))
                .put("sequence", Fields.list(recommendation.sequence().grades(), RecommendationJson::tree))
                .put("parameters", tree(recommendation.parameters()))
                .put("rulebase", tree(recommendation.rulebase()))
                .tree();
    }

    private static void requireOwnGrades(Recommendation recommendation) {
        Stream<AbrasiveGrade> planned = recommendation.plan().stream()
                .flatMap(plan -> plan.tracks().stream())
                .flatMap(track -> track.steps().stream())
                .map(Step::grade);
        Stream<AbrasiveGrade> onHand = recommendation.survey().answer(SurveyField.GRADES).value().stream()
                .flatMap(List::stream);
        List<AbrasiveGrade> known = recommendation.sequence().grades();
        Stream.concat(planned, onHand)
                .filter(grade -> !known.contains(grade))
                .findFirst()
                .ifPresent(grade -> {
                    throw new InvalidInputException(
                            "sequence",
                            "without " + grade.key() + " as planned or on hand",
                            "a sequence with every grade of the plan and the survey, of the same grain");
                });
    }

    static Recommendation read(Node root) {
        root.form(WHAT, Recommendation.FORMAT);
        root.only(List.of(
                "format",
                "status",
                "plan",
                "refusals",
                "warnings",
                "questions",
                "counter-offers",
                "outcomes",
                "survey",
                "sequence",
                "parameters",
                "rulebase"));
        Node grades = root.get("sequence");
        List<AbrasiveGrade> listed = grades.list(RecommendationJson::grade);
        GritSequence sequence = grades.checked(() -> GritSequence.of(listed));
        return new Recommendation(
                root.get("status").term(Status.class),
                root.optional("plan").map(plan -> PlanJson.read(plan, sequence)),
                root.get("refusals").list(RecommendationJson::reason),
                root.get("warnings").list(RecommendationJson::warning),
                root.get("questions").list(RecommendationJson::question),
                root.get("counter-offers").list(RecommendationJson::offer),
                root.get("outcomes").list(RecommendationJson::outcome),
                SurveyJson.read(root.get("survey"), sequence),
                sequence,
                parameters(root.get("parameters")),
                stamp(root.get("rulebase")));
    }

    static Object tree(Reason reason) {
        return new Fields()
                .put("kind", reason.kind().key())
                .put("rule", reason.rule())
                .put("values", reason.values())
                .put("facts", Fields.list(reason.facts(), RecommendationJson::tree))
                .tree();
    }

    static Reason reason(Node node) {
        node.only(List.of("kind", "rule", "values", "facts"));
        return new Reason(
                node.get("kind").term(ContributionKind.class),
                node.get("rule").text(),
                node.get("values").texts(),
                node.get("facts").list(RecommendationJson::fact));
    }

    static Object tree(MatchedFact fact) {
        return new Fields()
                .put("name", fact.name())
                .put("may-be", fact.mayBe())
                .put("known", fact.known())
                .put("fields", fact.fields())
                .put("topics", fact.topics())
                .tree();
    }

    static MatchedFact fact(Node node) {
        node.only(List.of("name", "may-be", "known", "fields", "topics"));
        return new MatchedFact(
                node.get("name").text(),
                node.get("may-be").texts(),
                node.get("known").flag(),
                node.get("fields").texts(),
                node.get("topics").texts());
    }

    static Object tree(SafetyWarning warning) {
        return new Fields()
                .put("hazard", warning.hazard().key())
                .put("precautions", Term.keys(warning.precautions()))
                .put("decides", Term.keys(warning.decides()))
                .put("rules", warning.rules())
                .put("sources", warning.sources())
                .put("certain", warning.certain())
                .tree();
    }

    static SafetyWarning warning(Node node) {
        node.only(List.of("hazard", "precautions", "decides", "rules", "sources", "certain"));
        return new SafetyWarning(
                node.get("hazard").term(Hazard.class),
                List.copyOf(node.get("precautions").terms(Precaution.class)),
                List.copyOf(node.get("decides").terms(Role.class)),
                node.get("rules").texts(),
                node.get("sources").texts(),
                node.get("certain").flag());
    }

    private static Object tree(Question question) {
        return new Fields()
                .put("field", question.field())
                .put("rules", question.rules())
                .put("waiting", question.waiting())
                .put("topics", question.topics())
                .tree();
    }

    private static Question question(Node node) {
        node.only(List.of("field", "rules", "waiting", "topics"));
        return new Question(
                node.get("field").text(),
                node.get("rules").texts(),
                node.get("waiting").texts(),
                node.get("topics").texts());
    }

    static Object tree(CounterOffer offer) {
        return new Fields()
                .put("kind", offer.kind().key())
                .put("topic", offer.topic())
                .put("values", offer.values())
                .put("rules", offer.rules())
                .tree();
    }

    static CounterOffer offer(Node node) {
        node.only(List.of("kind", "topic", "values", "rules"));
        return new CounterOffer(
                node.get("kind").term(OfferKind.class),
                node.get("topic").text(),
                node.get("values").texts(),
                node.get("rules").texts());
    }

    static Object tree(Outcome outcome) {
        if (outcome instanceof Decision decision) {
            return new Fields()
                    .put("kind", "decision")
                    .put("topic", decision.topic())
                    .put("subject", decision.subject().key())
                    .put("values", decision.values())
                    .put("won", Fields.list(decision.won(), RecommendationJson::tree))
                    .put("outweighed", Fields.list(decision.outweighed(), RecommendationJson::tree))
                    .put("vetoed", Fields.list(decision.vetoed(), RecommendationJson::tree))
                    .put("inputs", decision.inputs())
                    .tree();
        }
        Impasse impasse = (Impasse) outcome;
        return new Fields()
                .put("kind", "impasse")
                .put("topic", impasse.topic())
                .put("subject", impasse.subject().key())
                .put("needs", Fields.list(impasse.needs(), RecommendationJson::tree))
                .put("vetoes", Fields.list(impasse.vetoes(), RecommendationJson::tree))
                .put("until-known", impasse.untilKnown())
                .put("lacking", impasse.lacking())
                .tree();
    }

    static Outcome outcome(Node node) {
        String topic = node.get("topic").text();
        Node subject = node.get("subject");
        Subject about = Subject.parse(subject.text(), subject.path());
        if (node.get("kind").isText("impasse")) {
            node.only(List.of("kind", "topic", "subject", "needs", "vetoes", "until-known", "lacking"));
            return new Impasse(
                    topic,
                    about,
                    node.get("needs").list(RecommendationJson::reason),
                    node.get("vetoes").list(RecommendationJson::reason),
                    node.get("until-known").flag(),
                    node.get("lacking").texts());
        }
        if (!node.get("kind").isText("decision")) {
            throw new InvalidInputException(
                    node.path() + ".kind", String.valueOf(node.get("kind").value()), "decision or impasse");
        }
        node.only(List.of("kind", "topic", "subject", "values", "won", "outweighed", "vetoed", "inputs"));
        return new Decision(
                topic,
                about,
                node.get("values").texts(),
                node.get("won").list(RecommendationJson::reason),
                node.get("outweighed").list(RecommendationJson::reason),
                node.get("vetoed").list(RecommendationJson::reason),
                node.get("inputs").texts());
    }

    private static Object tree(AbrasiveGrade grade) {
        return new Fields()
                .put("bond", grade.bond().key())
                .put("number", grade.number())
                .put("grain", Fields.range(grade.grain()))
                .tree();
    }

    private static AbrasiveGrade grade(Node node) {
        node.only(List.of("bond", "number", "grain"));
        Range<Length> grain = PlanJson.range(node.get("grain"), Dimension.LENGTH, Length.class);
        Bond bond = node.get("bond").term(Bond.class);
        Node number = node.get("number");
        int grit = number.integer();
        return number.checked(() -> new AbrasiveGrade(bond, grit, grain));
    }

    private static Object tree(Parameters parameters) {
        Fields fields = new Fields();
        parameters.all().forEach(parameter -> fields.put(parameter.name(), Fields.quantity(parameter.value())));
        return fields.tree();
    }

    private static Parameters parameters(Node node) {
        List<String> names =
                Parameters.standard().all().stream().map(Parameter::name).toList();
        node.only(names);
        Parameters parameters = Parameters.standard();
        for (String name : names) {
            Node value = node.get(name);
            Parameters before = parameters;
            Quantity number = value.quantity(parameters.parameter(name).value().dimension());
            parameters = value.checked(() -> before.with(name, number));
        }
        return node.checkedParts(parameters::requireRanges);
    }

    static Object tree(RulebaseStamp stamp) {
        return new Fields()
                .put("version", stamp.version())
                .put("hash", stamp.hash())
                .put("switched-off", stamp.switchedOff())
                .put("house", Fields.list(stamp.house(), RecommendationJson::tree))
                .tree();
    }

    private static Object tree(HouseRule rule) {
        return new Fields()
                .put("kind", rule.kind().key())
                .put("name", rule.name())
                .put("who", rule.who())
                .put("why", rule.why())
                .tree();
    }

    private static HouseRule houseRule(Node node) {
        node.only(List.of("kind", "name", "who", "why"));
        HouseRuleKind kind = node.get("kind").term(HouseRuleKind.class);
        String name = node.get("name").text();
        String who = node.get("who").text();
        String why = node.get("why").text();
        return node.checked(() -> new HouseRule(kind, name, who, why));
    }

    static RulebaseStamp stamp(Node node) {
        node.only(List.of("version", "hash", "switched-off", "house"));
        return new RulebaseStamp(
                node.get("version").text(),
                node.get("hash").text(),
                node.get("switched-off").texts(),
                node.get("house").list(RecommendationJson::houseRule));
    }
}
