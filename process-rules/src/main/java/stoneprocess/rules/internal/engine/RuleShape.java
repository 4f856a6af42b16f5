package stoneprocess.rules.internal.engine;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Declaration;
import org.drools.model.Pattern;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;

/** What is forbidden about the form of a rule's conditions and attributes: anything that is not flat. */
final class RuleShape {
    private static final Map<String, Rule.Attribute<?>> ATTRIBUTES = Map.ofEntries(
            Map.entry("salience", Rule.Attribute.SALIENCE),
            Map.entry("enabled", Rule.Attribute.ENABLED),
            Map.entry("no-loop", Rule.Attribute.NO_LOOP),
            Map.entry("auto-focus", Rule.Attribute.AUTO_FOCUS),
            Map.entry("lock-on-active", Rule.Attribute.LOCK_ON_ACTIVE),
            Map.entry("activation-group", Rule.Attribute.ACTIVATION_GROUP),
            Map.entry("duration", Rule.Attribute.DURATION),
            Map.entry("timer", Rule.Attribute.TIMER),
            Map.entry("calendars", Rule.Attribute.CALENDARS),
            Map.entry("date-effective", Rule.Attribute.DATE_EFFECTIVE),
            Map.entry("date-expires", Rule.Attribute.DATE_EXPIRES));

    private RuleShape() {}

    /** Forbidden conditions and attributes of a compiled rule, in the order of the alphabet; none when it is flat. */
    static List<String> forbidden(Rule rule) {
        Set<String> shapes = new TreeSet<>();
        for (Condition condition : rule.getView().getSubConditions()) {
            if (condition instanceof Pattern<?> pattern) {
                if (pattern.getPatternVariable() instanceof Declaration<?> declared && declared.getSource() != null) {
                    shapes.add("from");
                }
                if (comparesFacts(pattern.getConstraint())) {
                    shapes.add("two-facts-compared");
                }
            } else if (condition.getType() != Condition.Type.CONSEQUENCE) {
                shapes.add(condition.getType().name().toLowerCase(Locale.ROOT));
            }
        }
        ATTRIBUTES.forEach((name, attribute) -> {
            if (!Objects.equals(rule.getAttribute(attribute), attribute.getDefaultValue())) {
                shapes.add(name);
            }
        });
        return List.copyOf(shapes);
    }

    private static boolean comparesFacts(Constraint constraint) {
        return constraint instanceof SingleConstraint single
                ? single.getVariables().length > 1
                : constraint.getChildren().stream().anyMatch(RuleShape::comparesFacts);
    }
}
