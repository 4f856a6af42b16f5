package stoneprocess.rules.internal.classify;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.parameter.NamedScale;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.rules.feature.BuildUp;
import stoneprocess.rules.feature.Condition;
import stoneprocess.rules.feature.Equipment;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.Site;
import stoneprocess.rules.feature.StoneFacts;
import stoneprocess.rules.feature.Wishes;
import stoneprocess.rules.internal.classify.FactLine.Origin;

/**
 * The part of the table of facts that the fields of a survey declare: an answer that rules read as it stands is one fact.
 */
final class FieldFacts {
    private static final List<Class<?>> HOLDERS =
            List.of(StoneFacts.class, BuildUp.class, Condition.class, Site.class, Equipment.class, Wishes.class);

    private static final Map<String, Class<?>> RECORDS = HOLDERS.stream()
            .flatMap(holder -> Stream.of(holder.getDeclaredClasses()))
            .collect(Collectors.toUnmodifiableMap(Class::getSimpleName, type -> type));

    private FieldFacts() {}

    /** The lines, in the order of a survey form. */
    static List<FactLine> lines() {
        return SurveyField.all().stream()
                .filter(field -> field.fact().isPresent())
                .map(FieldFacts::line)
                .toList();
    }

    @SuppressWarnings("unchecked") // The classes of the record are compared with those of the field.
    private static <E extends Enum<E> & Term, F extends Feature<E>> FactLine line(SurveyField<?> field) {
        String name = field.fact().orElseThrow();
        if (!RECORDS.containsKey(name)) {
            throw new IllegalStateException("Field " + field + " declares the fact " + name + ", which has no record");
        }
        FeatureRecord<E, F> feature = FeatureRecord.of((Class<F>) RECORDS.get(name), Set.class);
        Function<Situation, Set<E>> classify;
        Class<?> classes;
        if (field.kind() instanceof FieldKind.Choice choice) {
            classes = choice.type();
            classify = situation -> situation.answer((SurveyField<E>) field, feature.classes());
        } else {
            NamedScale<E> scale = (NamedScale<E>) field.scale()
                    .orElseThrow(() -> new IllegalStateException("Field " + field + " declares the fact " + name
                            + ", but no scale that makes classes of it"));
            classes = scale.classes();
            classify = situation -> SurveyClasses.scaled(situation, (SurveyField<? extends Quantity>) field, scale);
        }
        if (classes != feature.classes()) {
            throw new IllegalStateException("Field " + field + " answers with " + classes.getSimpleName()
                    + ", but its fact " + name + " has " + feature.classes().getSimpleName());
        }
        return new SingleFact<>(feature, classify, Origin.fields(field.name()), false);
    }
}
