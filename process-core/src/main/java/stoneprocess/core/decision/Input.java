package stoneprocess.core.decision;

import java.util.Objects;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** One thing that went into a computed value: another decision, an answer of the survey, or a parameter. */
public sealed interface Input {
    /** What was decided on a topic. */
    record OfTopic(Topic<?> topic) implements Input {
        public OfTopic {
            Refuse.nulls(OfTopic.class, topic);
        }

        @Override
        public String name() {
            return topic.id();
        }
    }

    /** What the survey answers to a field. */
    record OfField(SurveyField<?> field) implements Input {
        public OfField {
            Refuse.nulls(OfField.class, field);
        }

        @Override
        public String name() {
            return field.name();
        }
    }

    /** What the survey found of a kind of damage. */
    record OfDamage(DamageKind kind) implements Input {
        public OfDamage {
            Refuse.nulls(OfDamage.class, kind);
        }

        @Override
        public String name() {
            return "damages." + kind.key();
        }
    }

    /** A parameter, by its name. */
    record OfParameter(String name) implements Input {
        public OfParameter {
            Refuse.nulls(OfParameter.class, name);
        }
    }

    /** Id of the topic, or name of the field, the damage or the parameter; no two of these are alike. */
    String name();

    /** What has that name: a topic, else a field, else a kind of damage; every other name is that of a parameter. */
    static Input named(String name) {
        Objects.requireNonNull(name, "name");
        for (Topic<?> topic : Topics.all()) {
            if (topic.id().equals(name)) {
                return new OfTopic(topic);
            }
        }
        for (SurveyField<?> field : SurveyField.all()) {
            if (field.name().equals(name)) {
                return new OfField(field);
            }
        }
        for (DamageKind kind : DamageKind.values()) {
            Input damage = new OfDamage(kind);
            if (damage.name().equals(name)) {
                return damage;
            }
        }
        return new OfParameter(name);
    }
}
