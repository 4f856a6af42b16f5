package stoneprocess.rules.mutation;

import java.lang.reflect.Field;
import java.util.List;
import java.util.function.Supplier;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.run.Program;

/**
 * A topic that is closed by another policy. Topics are shared by all that runs, so only one such fault may stand at a time
 * and nothing else may run beside it.
 *
 * @param topic the topic
 * @param policy the policy that it gets
 */
record PolicyFault(Choice<?> topic, PolicyKind policy) {
    private static final List<PolicyKind> BY_VALUE =
            List.of(PolicyKind.ONE, PolicyKind.ALL, PolicyKind.PRECEDENCE, PolicyKind.REMAINS, PolicyKind.RANKED);

    /** Every topic of a plan that is closed by its values, under every other policy of that kind. */
    static List<PolicyFault> all() {
        return Topics.all().stream()
                .filter(topic -> Program.RECOMMEND.stages().contains(topic.stage()))
                .filter(topic -> BY_VALUE.contains(topic.policy()))
                .flatMap(topic -> BY_VALUE.stream()
                        .filter(policy -> policy != topic.policy())
                        .map(policy -> new PolicyFault((Choice<?>) topic, policy)))
                .toList();
    }

    String what() {
        return topic.policy().key() + " to " + policy.key();
    }

    /** Does something while the fault stands. */
    <T> T during(Supplier<T> task) {
        PolicyKind own = topic.policy();
        set(policy);
        try {
            return task.get();
        } finally {
            set(own);
        }
    }

    private void set(PolicyKind kind) {
        try {
            Field field = Topic.class.getDeclaredField("policy");
            field.setAccessible(true);
            field.set(topic, kind);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("The policy of " + topic.id() + " cannot be changed", e);
        }
    }
}
