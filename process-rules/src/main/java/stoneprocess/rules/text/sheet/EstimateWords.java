package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.estimate.Assumption;
import stoneprocess.core.estimate.Line;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.PriceItem;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Task;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Ledger;
import stoneprocess.rules.text.document.Precision;
import stoneprocess.rules.text.document.Wording;

/** Words for the lines of an estimate and their figures. */
final class EstimateWords {
    static final Wording NOTHING = Wording.name("");
    static final Wording PRACTICE = phrase("estimate.basis.practice");
    static final Wording HOURS = Wording.name(Unit.HOUR.symbol());
    private static final MathContext TWO_DIGITS = new MathContext(2);
    private static final String TASK = "task.";
    private static final String MACHINE_HOUR = "machine-hour ";

    private static final Map<String, Term> NAMED =
            byKey(Stream.of(Task.values(), Repair.values(), FinishTask.values(), Handling.values()));

    private EstimateWords() {}

    private static Map<String, Term> byKey(Stream<Term[]> kinds) {
        return kinds.flatMap(Stream::of)
                .collect(Collectors.toMap(Term::key, Function.identity(), (first, again) -> first));
    }

    /** The task, repair or handling of this key, where there is one. */
    static Optional<Term> named(String key) {
        return Optional.ofNullable(NAMED.get(key));
    }

    /** The name of a step or of other work: a grit, a task, or either with the grit that it belongs to. */
    static Wording subject(String name) {
        int space = name.indexOf(' ');
        if (space > 0) {
            return phrase("estimate.of-grade")
                    .with("work", subject(name.substring(0, space)))
                    .with("grade", Words.grade(name.substring(space + 1)));
        }
        if (NAMED.containsKey(name)) {
            return Words.name(NAMED.get(name));
        }
        String key = "estimate.work." + name;
        return Language.english().has(key) ? phrase(key) : Words.grade(name);
    }

    /** The name of a task of a schedule: a step, other work, or work on the whole floor. */
    static Wording task(String name) {
        return Stream.of(Work.values())
                .filter(work -> work.key().equals(name))
                .findFirst()
                .map(Words::name)
                .orElseGet(() -> subject(name));
    }

    static Wording subjects(List<String> names) {
        return Wording.list(Wording.Joint.COMMA, names, EstimateWords::subject);
    }

    /** Work or a wait, with the step that it belongs to where there is one. */
    static Wording ofStep(Term kind, Optional<String> step) {
        return Wording.of(kind).with("subject", step.map(EstimateWords::subject).orElse(NOTHING));
    }

    /** The name of a line that two estimates may share, such as {@code open-field resin-800}. */
    static Wording line(String name, Term[] kinds) {
        int space = name.indexOf(' ');
        String key = space < 0 ? name : name.substring(0, space);
        Wording kind = Words.name(Stream.of(kinds)
                .filter(term -> term.key().equals(key))
                .findFirst()
                .orElseThrow());
        return space < 0
                ? kind
                : phrase("compared.of-step").with("line", kind).with("step", subject(name.substring(space + 1)));
    }

    /** What a price is for: a {@link PriceItem}, an hour of a class of machine, or the watch at the barrier. */
    static Wording priced(String name) {
        if (name.equals(Work.BARRIER.key())) {
            return Wording.of(Work.BARRIER);
        }
        return name.startsWith(MACHINE_HOUR)
                ? Wording.of(Term.parse(MachineClass.class, name.substring(MACHINE_HOUR.length()), name), "hour")
                : Wording.of(Term.parse(PriceItem.class, name, name));
    }

    /** One word for what a line of work rests on. */
    static Wording basis(PlannedJob planned, Line.WorkLine line) {
        return switch (line.basis()) {
            case CREW_TIMING -> Wording.of(line.basis());
            case DEFAULT -> source(line.assumptions());
            case GIVEN ->
                line.subject()
                        .map(planned.rates()::get)
                        .map(EstimateWords::source)
                        .orElseGet(() -> Wording.of(line.basis()));
        };
    }

    private static Wording source(List<Assumption> assumptions) {
        if (assumptions.stream().anyMatch(assumption -> assumption.source().id().equals("house"))) {
            return phrase("estimate.basis.house");
        }
        return assumptions.stream().anyMatch(assumption -> assumption.source().practice())
                ? PRACTICE
                : Wording.of(assumptions.stream()
                        .map(assumption -> assumption.source().grade())
                        .max(Comparator.naturalOrder())
                        .orElseThrow());
    }

    /** What a number is about: a task by its name, the rest as everywhere. */
    static Wording assumption(String name) {
        return name.startsWith(TASK) ? subject(name.substring(TASK.length())) : Words.parameter(name);
    }

    /** Adds a row of the three figures. */
    static <T extends Comparable<? super T>> void row(
            Ledger ledger, Wording label, Spread<T> spread, Function<? super T, Wording> print, Wording last) {
        ledger.row(
                label,
                Stream.of(spread.low(), spread.likely(), spread.high())
                        .map(print)
                        .toList(),
                last);
    }

    /** Hours to be compared: to the tenth, so that they add up. */
    static Wording tenths(TimeSpan time) {
        return number(time.in(Unit.HOUR), 1);
    }

    /** Hours of a wait, which are those of the plan. */
    static Wording waiting(TimeSpan time) {
        return number(time.in(Unit.HOUR), 0);
    }

    static Wording money(Money money) {
        return number(money.amount(), money.amount().abs().compareTo(BigDecimal.ONE) < 0 ? 2 : 0);
    }

    static Wording number(BigDecimal number, int decimals) {
        return Wording.number(number.setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** A count as it is, all else to two digits: an estimate promises no more. */
    static Wording number(Quantity quantity) {
        BigDecimal rounded = quantity instanceof Count
                ? quantity.decimal()
                : quantity.decimal().round(TWO_DIGITS);
        return Wording.amount(Quantity.of(rounded, quantity.dimension().unit()), Precision.NUMBER);
    }

    static Wording unit(Quantity quantity) {
        return Wording.amount(quantity, Precision.UNIT);
    }
}
