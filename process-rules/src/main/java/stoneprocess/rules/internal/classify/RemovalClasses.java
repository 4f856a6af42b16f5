package stoneprocess.rules.internal.classify;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.parameter.Scale;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Traits;
import stoneprocess.rules.feature.BudgetClass;

/** How much stone may be taken off in the life of the floor. */
final class RemovalClasses {
    private RemovalClasses() {}

    /** The most stone that may be taken off in the life of the floor; the least of what it may be. */
    static Optional<Length> mostRemoval(Situation situation) {
        return bodies(situation)
                .flatMap(body -> mostRemoval(body, situation).stream())
                .min(Comparator.naturalOrder());
    }

    private static Optional<Length> mostRemoval(Body body, Situation situation) {
        return DerivedFigure.removal(body)
                .of(situation.survey(), situation.parameters())
                .map(Length::new);
    }

    private static Stream<Body> bodies(Situation situation) {
        return Traits.across(StoneClasses.families(situation), Body.class, Traits::body).stream();
    }

    /** How much may be taken off, for each body that the stone may have; any class while the thickness is not known. */
    static Set<BudgetClass> budget(Situation situation) {
        Scale<BudgetClass> scale = DerivedFigure.BUDGET_SCALE.in(situation.parameters());
        EnumSet<BudgetClass> budgets = EnumSet.noneOf(BudgetClass.class);
        bodies(situation)
                .flatMap(body -> mostRemoval(body, situation).stream())
                .forEach(most -> budgets.add(exceeds(situation, most) ? BudgetClass.TINY : scale.classify(most)));
        return budgets.isEmpty() ? EnumSet.allOf(BudgetClass.class) : budgets;
    }

    /** True when grinding the measured damage out would take more than may be taken off. */
    private static boolean exceeds(Situation situation, Length most) {
        return DerivedFigure.GROUND_OUT.stream()
                .flatMap(kind -> DamageClasses.floor(situation, kind).governingDepth().stream())
                .anyMatch(depth -> depth.compareTo(most) > 0);
    }
}
