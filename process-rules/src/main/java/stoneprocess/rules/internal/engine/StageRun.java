package stoneprocess.rules.internal.engine;

import java.util.List;
import stoneprocess.core.topic.Stage;

/** Rules at work on the facts of one run: facts go in, a stage fires, what its rules said comes out. Always closed. */
public sealed interface StageRun extends AutoCloseable permits EngineRun, FlatRun {
    void insert(Object fact);

    /** Fires the rules of one stage and returns what they said. */
    List<Firing> fire(Stage stage);

    @Override
    void close();
}
