package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.Explanation;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.estimate.Alternative;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.EstimateComparison;
import stoneprocess.core.estimate.Estimator;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.exposure.CircuitUse;
import stoneprocess.core.exposure.Coupling;
import stoneprocess.core.exposure.DustControl;
import stoneprocess.core.exposure.ExposureInput;
import stoneprocess.core.exposure.FrictionReading;
import stoneprocess.core.exposure.GrindingTool;
import stoneprocess.core.exposure.Lift;
import stoneprocess.core.exposure.NoiseDay;
import stoneprocess.core.exposure.NoisePeriod;
import stoneprocess.core.exposure.PendulumReading;
import stoneprocess.core.exposure.RampClass;
import stoneprocess.core.exposure.RampReading;
import stoneprocess.core.exposure.RoomAir;
import stoneprocess.core.exposure.RoughnessReading;
import stoneprocess.core.exposure.RunningEngine;
import stoneprocess.core.exposure.SilicaTask;
import stoneprocess.core.exposure.SlipPlace;
import stoneprocess.core.exposure.SlurrySample;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Acidity;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.site.GritDone;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.site.Quotation;
import stoneprocess.core.site.QuotationRequest;
import stoneprocess.core.site.Variant;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.rulebook.RulebookPage;
import stoneprocess.rules.text.AnswerText;
import stoneprocess.rules.text.AuditText;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.FollowText;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.sheet.ComparedWay;
import stoneprocess.rules.text.sheet.EstimateSheet;
import stoneprocess.rules.text.sheet.ExposureSheet;
import stoneprocess.rules.text.sheet.GlossSheet;
import stoneprocess.rules.text.sheet.QuotationSheet;

/** In a language in which every phrase stands in brackets, no text has a word outside them but data. */
class EveryWordIsInTheBundlesTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Texts TEXTS = Texts.in(BracketedLanguage.language()).in(UnitSystem.US);
    private static final Pattern BRACKETED =
            Pattern.compile(BracketedLanguage.OPEN + "[^" + BracketedLanguage.OPEN + "]*?" + BracketedLanguage.CLOSE);
    private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z0-9/'-]*");
    private static final Pattern RULE_ID = Pattern.compile("[A-Z]{3}-\\d{3}");

    /** Data that reads the same in every language. */
    private static final List<String> DATA = Stream.of(
                    // Units, as the standards write them.
                    Stream.of(Dimension.values()).flatMap(dimension -> Unit.symbols(dimension).stream()),
                    // Seconds, in which no quantity is kept but short times are printed.
                    Stream.of("s"),
                    // Classes of the shod ramp, as the standard names them.
                    Stream.of(RampClass.values()).map(RampClass::name),
                    // Publications, by their own titles.
                    Sources.standard().all().stream()
                            .filter(citation -> !citation.practice())
                            .map(Citation::print))
            .flatMap(words -> words)
            .toList();

    /** What the ids of publications are made of. */
    private static final Set<String> OF_PUBLICATIONS = Sources.standard().all().stream()
            .flatMap(citation -> WORD.matcher(citation.id()).results().map(MatchResult::group))
            .collect(Collectors.toSet());

    private static FloorSurvey survey(String name) {
        return Json.SURVEY.read(read(Path.of("surveys", name + ".json")));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static Stream<String> samples() throws IOException {
        return Files.list(Path.of("surveys"))
                .map(path -> path.getFileName().toString().replace(".json", ""))
                .sorted();
    }

    /** Words outside brackets that are neither shipped data nor the given names of the user. */
    private static Set<String> foreign(String page, List<String> names) {
        String left = BRACKETED.matcher(page.replaceAll("\\s+", " ")).replaceAll(" ");
        List<String> data = new ArrayList<>(names);
        data.add(ADVISOR.rulebase().stamp().hash().substring(0, 12));
        DATA.stream().filter(text -> text.contains(" ")).forEach(data::add);
        data.removeIf(String::isBlank);
        data.sort(Comparator.comparing(String::length).reversed());
        for (String text : data) {
            left = left.replace(text, " ");
        }
        return WORD.matcher(left)
                .results()
                .map(MatchResult::group)
                .filter(word -> !DATA.contains(word)
                        && !OF_PUBLICATIONS.contains(word)
                        && !RULE_ID.matcher(word).matches())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void assertBracketed(List<String> pages, List<String> names) {
        assertThat(pages).isNotEmpty().allSatisfy(page -> {
            assertThat(page).contains(BracketedLanguage.OPEN);
            assertThat(foreign(page, names)).as(page).isEmpty();
        });
    }

    /** What the user named: floors, zones, places. */
    private static List<String> names(FloorSurvey survey) {
        List<String> names = new ArrayList<>(List.of(survey.title()));
        survey.zones().forEach(zone -> names.add(zone.name()));
        survey.readings().forEach(reading -> names.add(reading.zone()));
        return names;
    }

    @Test
    void the_brackets_find_a_word_that_no_bundle_has() {
        assertThat(foreign(
                        BracketedLanguage.OPEN + "grits" + BracketedLanguage.CLOSE + ": resin 800 lb CUT-003",
                        List.of()))
                .containsExactly("resin");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void plans_and_answers_about_them(String name) {
        FloorSurvey survey = survey(name);
        Recommendation plan = ADVISOR.recommend(survey);
        PlanText planText = new PlanText(ADVISOR.rulebase().cards());
        AnswerText answers = new AnswerText(ADVISOR.rulebase().parameters());
        List<String> pages = new ArrayList<>();
        for (Detail detail : Detail.values()) {
            pages.add(TEXTS.page(planText.document(plan, detail)));
        }
        Explanation explanation = ADVISOR.explain(plan);
        for (Matter matter : explanation.matters()) {
            Topic<?> topic = matter.topic();
            Why why = explanation.why(topic, matter.subject());
            pages.add(TEXTS.page(answers.document(why)));
            pages.add(TEXTS.line(answers.document(why)));
            explanation.alternatives(topic, matter.subject()).stream().limit(2).forEach(value -> {
                WhyNot whyNot = explanation.whyNot(topic, matter.subject(), value);
                pages.add(TEXTS.page(answers.document(whyNot)));
                pages.add(TEXTS.line(answers.document(whyNot)));
            });
        }
        Difference difference = Difference.between(plan, ADVISOR.recommend(survey("ferry-hall-granite")));
        pages.add(TEXTS.page(answers.document(difference)));
        pages.add(TEXTS.line(answers.document(difference)));
        Recommendation polished = ADVISOR.recommend(survey("ferry-hall-granite"));
        FloorSurvey honed = survey("ferry-hall-granite").toBuilder()
                .put(SurveyField.GOAL, Goal.HONE)
                .build();
        Document whatIf = answers.document(
                polished, ADVISOR.recommend(honed), ADVISOR.rulebase().cards());
        pages.add(TEXTS.page(whatIf));
        pages.add(TEXTS.line(whatIf));
        WhatElse whatElse = ADVISOR.whatElse(survey);
        pages.add(TEXTS.page(answers.document(whatElse, plan)));
        pages.add(TEXTS.line(answers.document(whatElse, plan)));
        List<String> names = names(survey);
        names.addAll(names(survey("ferry-hall-granite")));
        assertBracketed(pages, names);
    }

    @Test
    void ways_to_another_value() {
        FloorSurvey survey = survey("ferry-hall-granite");
        AnswerText answers = new AnswerText(ADVISOR.rulebase().parameters());
        List<String> pages = new ArrayList<>();
        for (String value : List.of("hone", "high-gloss", "satin")) {
            HowTo howTo = ADVISOR.howTo(survey, Topics.FINISH, Subject.FLOOR, value);
            pages.add(TEXTS.page(answers.document(howTo)));
            pages.add(TEXTS.line(answers.document(howTo)));
        }
        assertBracketed(pages, names(survey));
    }

    @ParameterizedTest
    @CsvSource({
        "counting-house-granite, counting-house-started-too-fine",
        "ferry-hall-granite, ferry-hall-goes-well",
        "reading-room-marble, reading-room-fill-came-out"
    })
    void next_moves_and_diagnoses(String name, String logName) {
        FloorSurvey survey = survey(name);
        JobLog log = Json.JOB_LOG.read(read(Path.of("logs", logName + ".json")));
        Recommendation plan = ADVISOR.recommend(survey);
        FollowText text = new FollowText(ADVISOR.rulebase().cards());
        List<String> names = names(survey);
        names.add(log.title());
        for (Entry entry : log.entries()) {
            if (entry instanceof Entry.Read reading) {
                names.add(reading.reading().place());
                names.add(reading.reading().zone());
            } else if (entry instanceof Entry.Looked looked) {
                names.add(looked.zone());
            } else if (entry instanceof Entry.Happened happened) {
                names.add(happened.zone());
            }
        }
        assertBracketed(
                List.of(
                        TEXTS.page(text.document(plan, log, ADVISOR.followUp(plan, log))),
                        TEXTS.page(text.document(plan, log, ADVISOR.diagnose(plan, EnumSet.allOf(Sign.class), log)))),
                names);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void estimates_and_their_comparison(String name) {
        FloorSurvey survey = survey(name);
        Recommendation plan = ADVISOR.recommend(survey);
        if (!PlannedJob.isThere(plan)) {
            assertBracketed(List.of(TEXTS.page(EstimateSheet.none(plan))), List.of());
            return;
        }
        PlannedJob planned = PlannedJob.of(plan, JobOptions.defaults());
        PriceList prices = Json.PRICE_LIST.read(read(Path.of("prices", "harbour-crew.json")));
        Estimate estimate = planned.estimate();
        PlannedJob other = PlannedJob.of(ADVISOR.recommend(survey("customs-house-terrazzo")), JobOptions.defaults());
        EstimateComparison comparison = EstimateComparison.of(
                new Alternative("here", planned.job(), List.of()),
                new Alternative("there", other.job(), List.of()),
                new Estimator(plan.parameters()),
                prices);
        List<String> names = names(survey);
        names.add("another floor");
        names.add(prices.currency());
        names.addAll(prices.exclusions());
        assertBracketed(
                List.of(
                        TEXTS.page(EstimateSheet.of(
                                plan,
                                planned,
                                estimate,
                                Optional.of(prices.cost(estimate)),
                                Optional.of(new ComparedWay("another floor", Optional.of(comparison))))),
                        TEXTS.page(EstimateSheet.of(
                                plan,
                                planned,
                                estimate,
                                Optional.empty(),
                                Optional.of(new ComparedWay("another floor", Optional.empty()))))),
                names);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void quotations(String name) {
        FloorSurvey survey = survey(name);
        PriceList prices = Json.PRICE_LIST.read(read(Path.of("prices", "harbour-crew.json")));
        Quotation quotation = Quotation.of(
                survey,
                QuotationRequest.asPlanned("the owner", "today")
                        .withVariants(List.of(
                                Variant.asPlanned(),
                                Variant.parse("hone,unsealed", "variant"),
                                Variant.parse("repairs-only", "variant"))),
                prices,
                ADVISOR::recommend);
        List<String> names = names(survey);
        names.addAll(List.of("the owner", "today", prices.currency()));
        names.addAll(prices.exclusions());
        Parameters parameters = ADVISOR.rulebase().parameters();
        assertBracketed(
                List.of(
                        TEXTS.page(QuotationSheet.of(quotation, parameters, false)),
                        TEXTS.page(QuotationSheet.of(quotation, parameters, true))),
                names);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void gloss_sheets(String name) {
        FloorSurvey survey = survey(name);
        Recommendation plan = ADVISOR.recommend(survey);
        List<GritDone> done = List.of(
                new GritDone(400, 3, List.of(new Gloss(60), new Gloss(61))),
                new GritDone(800, 1, List.of()),
                new GritDone(1500, 4, List.of(new Gloss(99))));
        List<GlossQuestion> questions = List.of(
                new GlossQuestion(Optional.empty(), new Gloss(2), Optional.empty(), List.of()),
                new GlossQuestion(Optional.of(new Gloss(35)), new Gloss(2), Optional.empty(), done),
                new GlossQuestion(Optional.of(new Gloss(99)), new Gloss(2), Optional.empty(), List.of()));
        assertBracketed(
                questions.stream()
                        .map(question -> TEXTS.page(GlossSheet.of(plan, question)))
                        .toList(),
                names(survey));
    }

    @Test
    void sheets_about_exposure() {
        List<ExposureInput> inputs = List.of(
                new NoiseDay(List.of(new NoisePeriod(new SoundLevel(95), new TimeSpan(120)))),
                new RunningEngine(
                        new RoomAir(new Volume(66000), new Airflow(0), new Concentration(0)),
                        Optional.of(new Power(5)),
                        Optional.empty(),
                        new TimeSpan(60)),
                new SilicaTask(
                        GrindingTool.HAND_GRINDER,
                        new DustControl.Collector(true, new Airflow(100), Optional.empty(), new Share(90), false),
                        new Length(125),
                        true,
                        new TimeSpan(300),
                        false),
                new SilicaTask(
                        GrindingTool.FLOOR_GRINDER,
                        new DustControl.BucketWater(),
                        new Length(500),
                        false,
                        new TimeSpan(60),
                        true),
                new PendulumReading(new PendulumValue(30)),
                new RoughnessReading(new Length(0.015)),
                new FrictionReading(new Friction(0.4), SlipPlace.EXTERIOR_WET),
                new RampReading(new Angle(12)),
                new RampReading(new Angle(2)),
                new SlurrySample(new Acidity(12.8)),
                new SlurrySample(new Acidity(7)),
                new Lift(
                        new Mass(30),
                        new Length(400),
                        new Length(200),
                        new Length(700),
                        new Angle(45),
                        new Count(20),
                        new TimeSpan(15),
                        new TimeSpan(60),
                        Coupling.POOR),
                new CircuitUse(new Voltage(230), new Current(16), List.of(new Power(4))));
        assertBracketed(inputs.stream().map(ExposureSheet::of).map(TEXTS::page).toList(), List.of());
    }

    /**
     * Findings name facts, topics and values by the keys under which chapters and JSON have them, and give the reason of
     * whoever explained them, in that person's words: they are for who writes rules.
     */
    @Test
    void the_audit() {
        AuditReport report = AuditedOnce.REPORT;
        List<String> keys = new ArrayList<>();
        for (AuditFinding finding : report.findings()) {
            keys.add(finding.topicId());
            keys.addAll(finding.values());
            keys.addAll(finding.details());
            finding.facts().forEach(fact -> {
                keys.add(fact.name());
                keys.addAll(fact.mayBe());
            });
            finding.explained().ifPresent(keys::add);
        }
        assertBracketed(List.of(TEXTS.unwrapped(new AuditText(ADVISOR.rulebase().cards()).document(report))), keys);
    }

    /** A house sets numbers by their names, and writes rules by the keys of topics and values. */
    @Test
    void the_rulebook() {
        List<String> names = new ArrayList<>();
        ADVISOR.rulebase().parameters().all().forEach(parameter -> names.add("`" + parameter.name() + "`"));
        for (Topic<?> topic : Topics.all()) {
            names.add("`" + topic.id() + "`");
            names.add(String.join(", ", Term.keys(topic.domain())));
        }
        assertBracketed(List.of(RulebookPage.markdown(TEXTS, ADVISOR.rulebase())), names);
    }
}
