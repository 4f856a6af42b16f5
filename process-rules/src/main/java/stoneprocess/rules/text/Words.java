package stoneprocess.rules.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Precision;
import stoneprocess.rules.text.document.Wording;

/**
 * The words for one thing, for who makes pages of his own: {@code Texts.in(locale).word(Words.fact(matched))}. A term by
 * itself is {@link Wording#of}, a rule's title and reason are {@link Wording#title} and {@link Wording#because}.
 */
public final class Words {
    /** Volts between phases, and of one phase, of the usual low-voltage supply (IEC 60038). */
    private static final double THREE_PHASES = 400;

    private static final double ONE_PHASE = 230;

    /** Minutes. */
    private static final double DAY = 24 * 60;

    private static final double WEEK = 7 * DAY;

    private static final double TWO_YEARS =
            TimeSpan.of(2, Unit.YEAR).in(Unit.MINUTE).doubleValue();

    private Words() {}

    /** A fact that a rule matched, about the floor or about the work on it. */
    public static Wording fact(MatchedFact fact) {
        return FactWords.so(fact);
    }

    /** A term in a list: a name of its own where the bundles have one, else the phrase itself. */
    public static Wording name(Term term) {
        return ValueWords.name(term);
    }

    /** A term in a table or on the first page of a plan: a short word of its own where the bundles have one, else its name. */
    public static Wording shortly(Term term) {
        return PlanWords.shortly(Objects.requireNonNull(term, "term"));
    }

    /** A grit such as {@code resin-800}; another key stands as it is. */
    public static Wording grade(String key) {
        return ValueWords.grade(Objects.requireNonNull(key, "key"));
    }

    public static Wording grade(Bond bond, int number) {
        return ValueWords.grade(bond, number);
    }

    /** Which rulebase made it. */
    public static Wording rulebase(RulebaseStamp rulebase) {
        return WarningWords.rulebase(rulebase);
    }

    /** What a parameter is about; its own name where the bundles have no words for it. */
    public static Wording parameter(String name) {
        String key = "parameter." + name;
        return Language.english().has(key) ? Wording.phrase(key) : Wording.name(name);
    }

    /** A safety warning as one paragraph: what it is, what to do, the limit, who decides. */
    public static Wording warning(SafetyWarning warning) {
        return WarningWords.inOneGo(warning);
    }

    /** A hazard and who decides about it. */
    public static Wording whoDecides(SafetyWarning warning) {
        return Wording.phrase("warnings.who-decides")
                .with("hazard", warning.hazard())
                .with("decides", WarningWords.decides(warning));
    }

    /** Hazards by who decides about them. */
    public static List<Wording> whoDecide(List<SafetyWarning> warnings) {
        Map<Wording, List<Wording>> byRole = new LinkedHashMap<>();
        warnings.forEach(warning -> byRole.computeIfAbsent(WarningWords.decides(warning), role -> new ArrayList<>())
                .add(PlanWords.shortly(warning.hazard())));
        return byRole.entrySet().stream()
                .<Wording>map(role -> Wording.phrase("warnings.decided-by")
                        .with("hazards", Wording.list(Wording.Joint.COMMA, role.getValue()))
                        .with("decides", role.getKey()))
                .toList();
    }

    /** A step as one sentence: grit, machine, weight, water and passes. */
    public static Wording step(TrackKind track, PlannedStep step) {
        return StepWords.inOneGo(Objects.requireNonNull(track, "track"), step);
    }

    /** The question and how it is settled. */
    public static Wording question(Question question) {
        return Wording.sentences(FieldWords.question(question.field()), FieldWords.howFound(question.field()));
    }

    /** A rule's title and reason as two sentences. */
    public static Wording rule(Card card) {
        return RuleWords.because(card);
    }

    /** What was decided, and what about: {@code First cut, open field: resin 50.} */
    public static Wording outcome(Outcome outcome) {
        return Wording.phrase("answer.outcome")
                .with("matter", ValueWords.matter(outcome))
                .with("value", AnswerWords.outcome(outcome));
    }

    /** An amount that a survey gives: a room in cubic metres or feet, a time of a week and more in days, of two years and more in years. */
    public static Wording surveyed(Quantity amount) {
        if (amount instanceof TimeSpan time && time.minutes() >= WEEK) {
            boolean years = time.minutes() >= TWO_YEARS;
            return Wording.phrase(years ? "amount.years" : "amount.days")
                    .with("count", (int) Math.rint(time.minutes() / (years ? TWO_YEARS / 2 : DAY)));
        }
        return Wording.amount(amount, amount.dimension() == Dimension.VOLUME ? Precision.GIVEN : Precision.USUAL);
    }

    /** Hours of work, in whole hours from ten on, so that lines and totals add up. */
    public static Wording hours(TimeSpan time) {
        BigDecimal hours = time.in(Unit.HOUR);
        int decimals = hours.compareTo(BigDecimal.TEN) < 0 ? 1 : 0;
        return Wording.number(hours.setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** Amperes of a load by its power alone, with three phases and with one. */
    public static Wording supply(Power power) {
        double watts = 1000 * power.kilowatts();
        return Wording.phrase("supply.amperes")
                .with("three", Wording.number(StrictMath.round(watts / (StrictMath.sqrt(3) * THREE_PHASES))))
                .with("single", Wording.number(StrictMath.round(watts / ONE_PHASE)));
    }

    /** One figure, or two with a dash between. */
    public static Wording span(int low, int high) {
        return low == high
                ? Wording.number(low)
                : Wording.phrase("table.range").with("low", Wording.number(low)).with("high", Wording.number(high));
    }
}
