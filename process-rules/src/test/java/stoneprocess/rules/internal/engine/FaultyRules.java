package stoneprocess.rules.internal.engine;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.drools.model.Model;

/**
 * Rules that are wrong on purpose, at least one for each kind of finding, as the build compiles them from
 * {@code src/test/resources/faulty-rulebase}. They have a class loader of their own, since they stand outside what is
 * shipped.
 */
public final class FaultyRules {
    private static final Path COMPILED = Path.of("target", "faulty-rulebase", "classes");
    private static final Path INDEX = COMPILED.resolve("META-INF/kie/stoneprocess/process-rules/drools-model");

    private FaultyRules() {}

    /** All of them, read as rules from elsewhere are. */
    public static CompiledRules all() throws IOException, ReflectiveOperationException {
        List<String> index = Files.readAllLines(INDEX);
        List<Model> models = new ArrayList<>();
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {COMPILED.toUri().toURL()}, FaultyRules.class.getClassLoader())) {
            for (String name : index.subList(1, index.size())) {
                models.add((Model) Class.forName(name, true, loader)
                        .getDeclaredConstructor()
                        .newInstance());
            }
            return CompiledRules.of(models);
        }
    }
}
