package stoneprocess.core;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Calendar;
import java.util.Collections;
import java.util.Date;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.NullMarked;

@AnalyzeClasses(packages = "stoneprocess.core", importOptions = ImportOption.DoNotIncludeTests.class)
class RoomsTest {
    /** Each room imports only rooms listed before it. */
    private static final List<String> ROOMS = List.of(
            "internal.check",
            "problem",
            "internal.input",
            "term",
            "internal.table",
            "quantity",
            "source",
            "parameter",
            "stone",
            "tool",
            "removal",
            "gloss",
            "exposure",
            "estimate",
            "survey",
            "topic",
            "decision",
            "log",
            "plan",
            "follow",
            "site",
            "answer",
            "audit",
            "json");

    private static final String ROOT = "stoneprocess.core.";

    @ArchTest
    static final ArchRule each_room_imports_only_rooms_listed_before_it = classes()
            .should(new ArchCondition<JavaClass>("import only rooms listed before") {
                @Override
                public void check(JavaClass from, ConditionEvents events) {
                    int own = room(from);
                    if (own < 0) {
                        events.add(SimpleConditionEvent.violated(from, from.getName() + " stands in no listed room"));
                    }
                    from.getDirectDependenciesFromSelf().stream()
                            .filter(dependency ->
                                    dependency.getTargetClass().getPackageName().startsWith(ROOT))
                            .filter(dependency -> room(dependency.getTargetClass()) > own)
                            .forEach(dependency ->
                                    events.add(SimpleConditionEvent.violated(from, dependency.getDescription())));
                }
            });

    private static int room(JavaClass javaClass) {
        return ROOMS.indexOf(javaClass.getPackageName().substring(ROOT.length()));
    }

    @ArchTest
    static final ArchRule rooms_form_no_circle =
            slices().matching("stoneprocess.core.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule only_the_json_room_knows_jackson = noClasses()
            .that()
            .resideOutsideOfPackage("stoneprocess.core.json")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("tools.jackson..");

    @ArchTest
    static final ArchRule only_the_gloss_room_knows_the_statistics_library = noClasses()
            .that()
            .resideOutsideOfPackage("stoneprocess.core.gloss")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.commons..");

    @ArchTest
    static final ArchRule the_core_knows_no_engine_and_no_rules = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.drools..", "org.kie..", "stoneprocess.rules..");

    @ArchTest
    static final ArchRule no_console = noClasses()
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(Throwable.class, "printStackTrace");

    @ArchTest
    static final ArchRule no_clock = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.time..")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(Date.class, Calendar.class)
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime");

    @ArchTest
    static final ArchRule no_chance = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(RandomGenerator.class)
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(UUID.class)
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callMethod(Collections.class, "shuffle", List.class);

    /** What Math computes may differ in the last digit from one machine to the next, except what is exact. */
    private static final Set<String> EXACT = Set.of("abs", "max", "min", "round", "floor", "ceil", "rint", "signum");

    @ArchTest
    static final ArchRule figures_are_the_same_on_every_machine = noClasses()
            .should()
            .callMethodWhere(new DescribedPredicate<JavaMethodCall>("Math is not exact") {
                @Override
                public boolean test(JavaMethodCall call) {
                    return call.getTargetOwner().isEquivalentTo(Math.class)
                            && !EXACT.contains(call.getName())
                            && !call.getName().endsWith("Exact");
                }
            });

    @ArchTest
    static void every_listed_room_exists_and_no_other_does(JavaClasses classes) {
        assertThat(classes.stream().map(item -> item.getPackageName().substring(ROOT.length())))
                .hasSameElementsAs(ROOMS);
    }

    @ArchTest
    static final ArchRule null_safety_is_declared_in_every_room = classes()
            .that()
            .areTopLevelClasses()
            .should(new ArchCondition<JavaClass>("stand in a package marked @NullMarked") {
                @Override
                public void check(JavaClass item, ConditionEvents events) {
                    if (!item.getPackage().isAnnotatedWith(NullMarked.class)) {
                        events.add(SimpleConditionEvent.violated(item, item.getPackageName() + " is not marked"));
                    }
                }
            });
}
