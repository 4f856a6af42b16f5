package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Proxy;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.gloss.ReadingSet;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.StepRule;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TransitionUse;
import stoneprocess.rules.decide.GritPath;
import stoneprocess.rules.overlay.Overlay;

/**
 * Null is refused by name at the public doors of both libraries: the canonical constructors of records, static methods,
 * and the methods of {@link Advisor}. Each argument is null in turn; the others are whatever of their type is quickly had.
 */
@AnalyzeClasses(
        packages = {"stoneprocess.core", "stoneprocess.rules"},
        importOptions = {ImportOption.DoNotIncludeTests.class, RoomsTest.WithoutGeneratedRules.class})
class NullDoorsTest {
    /** What the machine says by itself when a method looks into an argument that is null. */
    private static final Pattern LOOKED_INTO = Pattern.compile(".* because \"(\\w+)\" is null");

    private static final Pattern NAME = Pattern.compile("[a-z]\\w*");

    private static final FloorSurvey FLOOR = FloorSurvey.builder("blank").build();

    private final Map<Class<?>, Object> samples = new HashMap<>();

    NullDoorsTest() {
        samples.put(Advisor.class, Advisor.standard());
        samples.put(Rulebase.class, Rulebase.standard());
        samples.put(Overlay.class, Overlay.none());
        samples.put(Parameters.class, Parameters.standard());
        samples.put(GritSequence.class, GritSequence.standard());
        samples.put(AbrasiveGrade.class, GritSequence.standard().grades().get(0));
        samples.put(FloorSurvey.class, FLOOR);
        samples.put(Recommendation.class, Advisor.standard().recommend(FLOOR));
        samples.put(JobLog.class, new JobLog("blank", List.of()));
        samples.put(JobOptions.class, JobOptions.defaults());
        samples.put(GlossCeiling.class, GlossCeiling.ofAnyStone());
        samples.put(ReadingSet.class, ReadingSet.of(List.of(), Geometry.DEG_60));
        samples.put(
                GritPath.class,
                new GritPath(
                        GritSequence.standard(),
                        Set.of(Bond.values()),
                        StepRule.USUAL,
                        TransitionUse.USE,
                        Parameters.standard()));
        samples.put(SurveyField.class, SurveyField.AREA);
        samples.put(Topic.class, Topics.FINISH);
        samples.put(Choice.class, Topics.FINISH);
        samples.put(Term.class, Finish.HONE);
        samples.put(Enum.class, Finish.HONE);
        samples.put(Class.class, Finish.class);
        samples.put(String.class, "blank");
        samples.put(Object.class, "blank");
        samples.put(Integer.class, 1);
        samples.put(Collection.class, List.of());
        samples.put(Optional.class, Optional.empty());
        samples.put(Set.class, Set.of(Family.SLATE));
        samples.put(Function.class, (Function<Object, Object>) anything -> Set.of());
    }

    @ArchTest
    static void records_refuse_null_by_name(JavaClasses classes) {
        NullDoorsTest doors = new NullDoorsTest();
        Set<String> open = new TreeSet<>();
        for (Class<?> type : promised(classes).filter(Class::isRecord).toList()) {
            RecordComponent[] components = type.getRecordComponents();
            for (int i = 0; i < components.length; i++) {
                if (components[i].getType().isPrimitive()) {
                    continue;
                }
                String refused = doors.refused(canonical(type), i);
                if (!refused.equals(components[i].getName())) {
                    open.add(type.getName() + "." + components[i].getName() + ": " + refused);
                }
            }
        }
        assertThat(open).isEmpty();
    }

    @ArchTest
    static void methods_refuse_null_by_name(JavaClasses classes) {
        NullDoorsTest doors = new NullDoorsTest();
        Set<String> open = new TreeSet<>();
        promised(classes)
                .flatMap(type -> Stream.of(type.getDeclaredMethods()))
                .filter(NullDoorsTest::isDoor)
                .forEach(method -> {
                    for (int i = 0; i < method.getParameterCount(); i++) {
                        if (method.getParameterTypes()[i].isPrimitive()) {
                            continue;
                        }
                        String refused = doors.refused(method, i);
                        if (!NAME.matcher(refused).matches()) {
                            open.add(method + " " + i + ": " + refused);
                        }
                    }
                });
        assertThat(open).isEmpty();
    }

    private static boolean isDoor(Method method) {
        return Modifier.isPublic(method.getModifiers())
                && !method.isSynthetic()
                && (Modifier.isStatic(method.getModifiers()) || method.getDeclaringClass() == Advisor.class)
                && !method.getDeclaringClass().isEnum();
    }

    private static Stream<Class<?>> promised(JavaClasses classes) {
        return classes.stream().filter(PromiseTest::isPromised).map(JavaClass::reflect);
    }

    private static Constructor<?> canonical(Class<?> type) {
        return Stream.of(type.getDeclaredConstructors())
                .filter(constructor -> List.of(constructor.getParameterTypes())
                        .equals(Stream.of(type.getRecordComponents())
                                .map(RecordComponent::getType)
                                .toList()))
                .findFirst()
                .orElseThrow();
    }

    /** The name by which null in a place is refused; what happened, where it is not refused by name. */
    private String refused(Executable door, int place) {
        Object[] arguments =
                Stream.of(door.getParameterTypes()).map(this::sample).toArray();
        arguments[place] = null;
        try {
            if (door instanceof Constructor<?> constructor) {
                constructor.newInstance(arguments);
            } else {
                ((Method) door).invoke(samples.get(door.getDeclaringClass()), arguments);
            }
            return "is accepted";
        } catch (InvocationTargetException e) {
            return refusal(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    private static String refusal(Throwable thrown) {
        String message = String.valueOf(thrown.getMessage());
        if (thrown instanceof InvalidInputException && !message.contains("null")) {
            return "invalid";
        } else if (!(thrown instanceof NullPointerException)) {
            return thrown.toString();
        }
        Matcher lookedInto = LOOKED_INTO.matcher(message);
        boolean own = thrown.getStackTrace()[0].getClassName().startsWith("stoneprocess.");
        return own && lookedInto.matches() ? lookedInto.group(1) : message;
    }

    private Object sample(Class<?> type) {
        Object known = samples.get(type);
        if (known == null) {
            known = make(type);
            samples.put(type, known);
        }
        return known;
    }

    private Object make(Class<?> type) {
        try {
            if (type.isPrimitive()) {
                return Array.get(Array.newInstance(type, 1), 0);
            } else if (type.isArray()) {
                return Array.newInstance(type.getComponentType(), 0);
            } else if (type.isEnum()) {
                return type.getEnumConstants()[0];
            } else if (type.isSealed()) {
                return sample(type.getPermittedSubclasses()[0]);
            } else if (type.isAssignableFrom(List.class)) {
                return List.of();
            } else if (type == Map.class) {
                return Map.of();
            } else if (type.isInterface()) {
                return Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, (proxy, method, a) -> null);
            }
            return blank(type);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    /** An object whose fields were never set; looking into one tells that a check comes too late. */
    private static Object blank(Class<?> type) throws ReflectiveOperationException {
        Class<?> factory = Class.forName("sun.reflect.ReflectionFactory");
        return ((Constructor<?>) factory.getMethod("newConstructorForSerialization", Class.class, Constructor.class)
                        .invoke(
                                factory.getMethod("getReflectionFactory").invoke(null),
                                type,
                                Object.class.getDeclaredConstructor()))
                .newInstance();
    }
}
