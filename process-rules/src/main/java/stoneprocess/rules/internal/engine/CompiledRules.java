package stoneprocess.rules.internal.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drools.model.Model;
import org.drools.model.Rule;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.topic.Card;

/**
 * Rules that were compiled anywhere, read leniently: those that are not flat are not refused but told apart.
 *
 * @param flat the rules that have the form of the shipped ones, ordered by id
 * @param misshapen the others, ordered by id
 */
public record CompiledRules(List<LoadedRule> flat, List<Misshapen> misshapen) {
    /**
     * A rule that is not flat.
     *
     * @param card its card
     * @param shapes what is forbidden about it
     */
    public record Misshapen(Card card, List<String> shapes) {
        public Misshapen {
            shapes = List.copyOf(shapes);
        }
    }

    public CompiledRules {
        flat = List.copyOf(flat);
        misshapen = List.copyOf(misshapen);
    }

    /**
     * The rules of generated models.
     *
     * @throws RulebaseException when a rule has no full card
     */
    public static CompiledRules of(List<Model> models) {
        List<LoadedRule> flat = new ArrayList<>();
        List<Misshapen> misshapen = new ArrayList<>();
        for (Model model : models) {
            for (Rule rule : model.getRules()) {
                Card card = ShippedRules.card(rule);
                List<String> shapes = RuleShape.forbidden(rule);
                if (shapes.isEmpty()) {
                    flat.add(new LoadedRule(
                            card, FactPattern.of(card.id(), rule.getView().getSubConditions()), rule));
                } else {
                    misshapen.add(new Misshapen(card, shapes));
                }
            }
        }
        flat.sort(Comparator.comparing(LoadedRule::id));
        misshapen.sort(Comparator.comparing(rule -> rule.card().id()));
        return new CompiledRules(flat, misshapen);
    }
}
