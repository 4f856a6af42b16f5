package stoneprocess.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stoneprocess.core.problem.StoneProcessException;

/** What users may count on, in both libraries. */
@AnalyzeClasses(
        packages = {"stoneprocess.core", "stoneprocess.rules"},
        importOptions = {ImportOption.DoNotIncludeTests.class, RoomsTest.WithoutGeneratedRules.class})
class PromiseTest {
    @ArchTest
    static void no_public_signature_names_an_internal_type(JavaClasses classes) {
        Set<String> naming = new TreeSet<>();
        classes.stream().filter(PromiseTest::isPromised).forEach(promised -> {
            if (namesInternal(Stream.of(
                            promised.getAllInvolvedRawTypes().stream(),
                            promised.getSuperclass().stream().flatMap(PromiseTest::named),
                            promised.getInterfaces().stream().flatMap(PromiseTest::named))
                    .flatMap(types -> types))) {
                naming.add(promised.getName());
            }
            promised.getMembers().stream()
                    .filter(PromiseTest::isPromised)
                    .filter(member -> namesInternal(named(member)))
                    .map(JavaMember::getFullName)
                    .forEach(naming::add);
        });
        assertThat(naming).isEmpty();
    }

    private static boolean isPromised(JavaMember member) {
        return member.getModifiers().contains(JavaModifier.PUBLIC)
                && !member.getModifiers().contains(JavaModifier.SYNTHETIC);
    }

    static boolean isPromised(JavaClass javaClass) {
        return javaClass.getModifiers().contains(JavaModifier.PUBLIC)
                && !isInternal(javaClass)
                && javaClass.getEnclosingClass().map(PromiseTest::isPromised).orElse(true);
    }

    private static boolean isInternal(JavaClass javaClass) {
        return javaClass.getPackageName().matches("stoneprocess\\..*\\.internal\\b.*");
    }

    private static boolean namesInternal(Stream<JavaClass> types) {
        return types.anyMatch(PromiseTest::isInternal);
    }

    private static Stream<JavaClass> named(JavaType type) {
        return type.getAllInvolvedRawTypes().stream();
    }

    private static Stream<JavaClass> named(JavaMember member) {
        if (member instanceof JavaField field) {
            return field.getAllInvolvedRawTypes().stream();
        }
        JavaCodeUnit unit = (JavaCodeUnit) member;
        return Stream.concat(unit.getAllInvolvedRawTypes().stream(), unit.getThrowsClause().getTypes().stream());
    }

    @ArchTest
    static void one_name_means_one_thing(JavaClasses classes) {
        assertThat(classes.stream()
                        .filter(item -> item.isTopLevelClass() && isPromised(item))
                        .map(JavaClass::getSimpleName))
                .doesNotHaveDuplicates();
    }

    @ArchTest
    static final ArchRule what_a_user_can_catch_has_one_supertype =
            classes().that().areAssignableTo(Throwable.class).should().beAssignableTo(StoneProcessException.class);

    @ArchTest
    static final ArchRule public_classes_are_closed = classes()
            .that()
            .arePublic()
            .should(new ArchCondition<JavaClass>("be final or sealed, or an interface or enum") {
                @Override
                public void check(JavaClass item, ConditionEvents events) {
                    boolean closed = item.getModifiers().contains(JavaModifier.FINAL)
                            || item.isInterface()
                            || item.isEnum()
                            || item.reflect().isSealed();
                    if (!closed) {
                        events.add(SimpleConditionEvent.violated(item, item.getName() + " can be subclassed"));
                    }
                }
            });
}
