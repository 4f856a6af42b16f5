package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What is worth finding out, in words: what decides most first, and of that what is cheapest to find out. */
record WhatElseWords(WhatElse whatElse, Recommendation recommendation) {
    private static final Set<Hazard> FIBRES = Set.of(Hazard.FIBROUS_STONE, Hazard.HAZARDOUS_LAYER);

    /** Of more questions than these, those that change little are told without the way to find out. */
    private static final int ONE_BY_ONE = 15;

    /** From the cheapest test on; what scratches or wets the stone comes after the laboratory. */
    private static final List<HowFound> BY_EFFORT = List.of(
            HowFound.ASK,
            HowFound.COUNT,
            HowFound.LOOK,
            HowFound.TAP,
            HowFound.METER,
            HowFound.THERMOMETER,
            HowFound.TOUCH,
            HowFound.MEASURE,
            HowFound.SLIP_TESTER,
            HowFound.ENGINEER,
            HowFound.LABORATORY,
            HowFound.DRAWINGS,
            HowFound.WATER,
            HowFound.SOLVENT,
            HowFound.SCRIBER,
            HowFound.ACID,
            HowFound.SCRAPE,
            HowFound.TRIAL);

    private static final String LABORATORY = SurveyField.LABORATORY.name();

    /** What an answer can change, the most decisive first. */
    enum Effect implements Term {
        WHETHER_CUT(List.of(Topics.VERDICT)),
        FINISH_OR_GRITS(List.copyOf(Question.DECISIVE)),
        WAY_OF_WORKING(List.of(
                Topics.METAL_METHOD,
                Topics.TEST_CUTS,
                Topics.MACHINE,
                Topics.ADDED_WEIGHT,
                Topics.WATER_LEVEL,
                Topics.PASSES,
                Topics.LITRES,
                Topics.POLISHING_AGENT,
                Topics.DENSIFIER,
                Topics.SEALER)),
        CARE(Topics.all()),
        PREPARATION_ALONE(List.of(Topics.PREPARATION)),
        AGREEMENT_ALONE(List.of(Topics.ACCEPTANCES));

        private final List<Topic<?>> topics;

        Effect(List<Topic<?>> topics) {
            this.topics = topics;
        }

        static Effect of(WhatElse.Open open) {
            for (Effect alone : List.of(PREPARATION_ALONE, AGREEMENT_ALONE)) {
                if (alone.topics.containsAll(open.topics())) {
                    return alone;
                }
            }
            return List.of(values()).stream()
                    .filter(effect -> open.topics().stream().anyMatch(effect.topics::contains))
                    .findFirst()
                    .orElseThrow();
        }
    }

    static Document full(WhatElse whatElse, Recommendation recommendation) {
        return new WhatElseWords(whatElse, recommendation).document();
    }

    private Document document() {
        Map<Effect, List<WhatElse.Open>> byEffect = byEffect();
        Draft draft = Draft.titled(
                        phrase("what-else.title")
                                .with("floor", recommendation.survey().title()),
                        recommendation.parameters())
                .inOneLine(brief(byEffect));
        if (!whatElse.untried().isEmpty()) {
            draft.paragraph(
                    phrase("what-else.untried").with("count", whatElse.untried().size()));
        }
        draft.paragraph(byEffect.isEmpty() ? nothing() : count(byEffect));
        int asked = recommendation.questions().size();
        if (!byEffect.isEmpty()
                && asked > byEffect.values().stream().mapToInt(List::size).sum()) {
            draft.paragraph(phrase("what-else.asked").with("asked", asked));
        }
        if (!byEffect.isEmpty() && warnsOf(FIBRES)) {
            draft.paragraph("what-else.caution");
        }
        boolean many = byEffect.values().stream().mapToInt(List::size).sum() > ONE_BY_ONE;
        byEffect.forEach((effect, open) -> {
            draft.section(Wording.of(effect));
            if (many && effect.compareTo(Effect.WAY_OF_WORKING) > 0) {
                draft.paragraph(Wording.list(Joint.SENTENCES, open, this::question));
            } else {
                byTest(open).forEach((how, questions) -> draft.bullet(questions(how, questions)));
            }
        });
        List<String> notes = new ArrayList<>();
        if (many) {
            notes.add("what-else.form");
        }
        if (whatElse.open().stream().anyMatch(open -> open.field().equals(SurveyField.SHIFT.name()))) {
            notes.add("what-else.shift");
        }
        if (isLaboratoryIdle()) {
            notes.add("what-else.laboratory");
        }
        if (!notes.isEmpty()) {
            draft.section("closing.heading");
        }
        notes.forEach(draft::paragraph);
        return draft.document();
    }

    /** A laboratory test of a stone that nothing makes suspect can change the advice only by what nobody expects. */
    private boolean isLaboratoryIdle() {
        return whatElse.open().stream().anyMatch(open -> open.field().equals(LABORATORY))
                && !warnsOf(Set.of(Hazard.FIBROUS_STONE));
    }

    private boolean warnsOf(Set<Hazard> hazards) {
        return recommendation.warnings().stream().map(SafetyWarning::hazard).anyMatch(hazards::contains);
    }

    private Map<Effect, List<WhatElse.Open>> byEffect() {
        Map<Effect, List<WhatElse.Open>> byEffect = new EnumMap<>(Effect.class);
        boolean idle = isLaboratoryIdle();
        Set<String> asked =
                recommendation.questions().stream().map(Question::field).collect(Collectors.toSet());
        whatElse.open().stream()
                .filter(open -> !idle || !open.field().equals(LABORATORY))
                // An answer that the plan asks nobody for goes against another that was given.
                .filter(open -> asked.isEmpty() || asked.contains(open.field()))
                .sorted(Comparator.comparingInt(open -> BY_EFFORT.indexOf(open.howFound())))
                .forEach(open -> byEffect.computeIfAbsent(Effect.of(open), effect -> new ArrayList<>())
                        .add(open));
        return byEffect;
    }

    /** Questions by the test that settles them, so that one look answers several. */
    private Map<Wording, List<Wording>> byTest(List<WhatElse.Open> open) {
        Map<Wording, List<Wording>> byTest = new LinkedHashMap<>();
        open.forEach(asked -> byTest.computeIfAbsent(
                        FieldWords.howFound(recommendation, asked.field()), how -> new ArrayList<>())
                .add(question(asked)));
        return byTest;
    }

    private Wording question(WhatElse.Open open) {
        return FieldWords.question(recommendation.survey(), open.field());
    }

    private static Wording questions(Wording how, List<Wording> questions) {
        List<Wording> sentences = new ArrayList<>(questions);
        if (!how.equals(Wording.of(HowFound.ASK))) {
            sentences.add(how);
        }
        return Wording.list(Joint.SENTENCES, sentences);
    }

    private Wording nothing() {
        return phrase(whatElse.untried().isEmpty() ? "what-else.nothing" : "what-else.nothing-so-far");
    }

    private String key(int decisive) {
        if (recommendation.plan().isEmpty()) {
            return "what-else.count.none";
        }
        if (decisive > 0) {
            boolean held = recommendation.status() == Status.PROVISIONAL;
            return held ? "what-else.count-decisive.held" : "what-else.count-decisive";
        }
        boolean cleaned = recommendation.values(Topics.VERDICT, Subject.FLOOR).contains(Verdict.CLEAN_ONLY);
        return cleaned ? "what-else.count.clean" : "what-else.count";
    }

    private Wording count(Map<Effect, List<WhatElse.Open>> byEffect) {
        int all = byEffect.values().stream().mapToInt(List::size).sum();
        int decisive = Optional.ofNullable(byEffect.get(Effect.WHETHER_CUT))
                .map(List::size)
                .orElse(0);
        return phrase(key(decisive)).with("count", all).with("decisive", decisive);
    }

    private Wording brief(Map<Effect, List<WhatElse.Open>> byEffect) {
        return byEffect.values().stream()
                .map(open -> open.get(0))
                .findFirst()
                .map(first -> {
                    Wording question = question(first);
                    return AnswerWords.shortest(
                            phrase("what-else.brief")
                                    .with("question", question)
                                    .with("more", whatElse.open().size() - 1),
                            phrase("what-else.first").with("question", question));
                })
                .orElseGet(this::nothing);
    }
}
