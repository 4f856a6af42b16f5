package stoneprocess.rules.internal.classify;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.parameter.Scale;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.rules.feature.BudgetClass;

/** How much stone may be taken off in the life of the floor. */
final class RemovalClasses {
    private RemovalClasses() {}

    /** The most stone that may be taken off in the life of the floor; the least of what it may be. */
    static Optional<Length> mostRemoval(Situation situation) {
        return situation.survey().answer(SurveyField.THICKNESS).value().map(thickness -> {
            double least = Traits.across(StoneClasses.families(situation), Body.class, Traits::body).stream()
                    .mapToDouble(body -> removalShare(body, situation.parameters()))
                    .min()
                    .orElseThrow();
            return new Length(thickness.millimetres() * least);
        });
    }

    private static double removalShare(Body body, Parameters parameters) {
        String share = body == Body.CEMENT ? "removal-share.topping" : "removal-share.stone";
        return parameters.get(share, Share.class).percent() / 100;
    }

    static Set<BudgetClass> budget(Situation situation) {
        Optional<Length> thickness =
                situation.survey().answer(SurveyField.THICKNESS).value();
        if (thickness.isEmpty()) {
            return EnumSet.allOf(BudgetClass.class);
        }
        Scale<BudgetClass> scale = Scale.of("removal-budget", BudgetClass.class, situation.parameters());
        EnumSet<BudgetClass> budgets = EnumSet.noneOf(BudgetClass.class);
        for (Body body : Traits.across(StoneClasses.families(situation), Body.class, Traits::body)) {
            Length most = new Length(thickness.get().millimetres() * removalShare(body, situation.parameters()));
            budgets.add(exceeds(situation, most) ? BudgetClass.SMALL : scale.classify(most));
        }
        return budgets;
    }

    /** True when grinding the measured damage out would take more than may be taken off. */
    private static boolean exceeds(Situation situation, Length most) {
        return Stream.of(DamageKind.SCRATCHES, DamageKind.LIPPAGE)
                .flatMap(kind -> DamageClasses.floor(situation, kind).governingDepth().stream())
                .anyMatch(depth -> depth.compareTo(most) > 0);
    }
}
