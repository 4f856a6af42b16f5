package stoneprocess.rules.internal.meaning;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.feature.GritClass;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.feature.StepEnd;
import stoneprocess.rules.feature.StepOrder;

/** One of the things that a rule can see of a step. */
public enum StepPart {
    TRACK(TrackKind.values(), Step::track),
    BOND(Bond.values(), Step::bond),
    GRIT(GritClass.values(), Step::grit),
    ORDER(StepOrder.values(), Step::order),
    END(StepEnd.values(), Step::end),
    METHOD(WorkMethod.values(), Step::method);

    private final List<Term> all;
    private final Function<Step, Term> read;

    StepPart(Term[] all, Function<Step, Term> read) {
        this.all = List.of(all);
        this.read = read;
    }

    /** What it can be. */
    public List<Term> all() {
        return all;
    }

    /** What it is of a step. */
    public Term of(Object step) {
        return read.apply((Step) step);
    }

    /** How conditions and unmet conditions call it. */
    public String fact() {
        return "Step." + name().toLowerCase(Locale.ROOT);
    }

    /** All that rules can see of a step; steps that agree in these are the same to every rule. */
    public static List<Term> allOf(Step step) {
        return Stream.of(values()).map(part -> part.of(step)).toList();
    }
}
