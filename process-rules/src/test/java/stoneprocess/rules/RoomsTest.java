package stoneprocess.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.jspecify.annotations.NullMarked;

@AnalyzeClasses(
        packages = "stoneprocess.rules",
        importOptions = {ImportOption.DoNotIncludeTests.class, RoomsTest.WithoutGeneratedRules.class})
class RoomsTest {
    /** The rules' own generated classes are no room. */
    static final class WithoutGeneratedRules implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("/stoneprocess/rules/chapter/");
        }
    }

    /** Each room imports only rooms listed before it; the empty name is the facade. */
    private static final List<String> ROOMS = List.of(
            "feature",
            "decide",
            "overlay",
            "internal.review",
            "internal.classify",
            "internal.engine",
            "internal.run",
            "internal.assemble",
            "internal.meaning",
            "internal.explain",
            "",
            "space",
            "text.document",
            "text",
            "text.sheet",
            "rulebook",
            "audit");

    private static final String ROOT = "stoneprocess.rules";

    private static final DescribedPredicate<JavaClass> ENGINE = DescribedPredicate.describe(
            "classes of the rule engine",
            javaClass -> javaClass.getPackageName().startsWith("org.drools")
                    || javaClass.getPackageName().startsWith("org.kie"));

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
        String name = javaClass.getPackageName();
        return ROOMS.indexOf(name.equals(ROOT) ? "" : name.substring(ROOT.length() + 1));
    }

    @ArchTest
    static final ArchRule rooms_form_no_circle =
            slices().matching("stoneprocess.rules.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule only_the_engine_room_knows_the_engine = noClasses()
            .that()
            .resideOutsideOfPackage("stoneprocess.rules.internal.engine")
            .should()
            .dependOnClassesThat(ENGINE);

    @ArchTest
    static final ArchRule no_clock_and_no_console = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.time..")
            .orShould()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(Math.class, "random");

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
