package stoneprocess.core.json;

import java.util.function.Supplier;
import stoneprocess.core.problem.MissingLibraryException;

/** Jackson is optional: without it there is one clear error. */
final class Jackson {
    private Jackson() {}

    static <T> T with(Supplier<T> work) {
        try {
            return work.get();
        } catch (NoClassDefFoundError e) {
            if (String.valueOf(e.getMessage()).contains("jackson")
                    || String.valueOf(e.getMessage()).contains("stoneprocess/core/json/Tree")
                    || String.valueOf(e.getMessage()).contains("stoneprocess.core.json.Tree")) {
                throw new MissingLibraryException(
                        "Reading and writing JSON needs tools.jackson.core:jackson-core 3.0 or later; add it to the"
                                + " class path",
                        e);
            }
            throw e;
        }
    }
}
