package stoneprocess.rules.internal.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.conf.KieBaseMutabilityOption;
import org.kie.api.runtime.KieSessionsPool;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.topic.Card;

/** A set of rules ready to run. Immutable and safe to share between threads; each run has a session of its own. */
public final class Engine {
    private final KieSessionsPool sessions;
    private final Map<RuleName, Card> cardsByRule = new HashMap<>();

    /** Builds an engine of the given rules; their order makes no difference to any outcome. */
    public Engine(List<LoadedRule> rules) {
        ClassLoader own = Engine.class.getClassLoader();
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        // The engine's own look-ups go through the context class loader, also in the first run.
        thread.setContextClassLoader(own);
        try {
            KieBase base = KieBaseBuilder.createKieBaseFromModel(models(rules), KieBaseMutabilityOption.DISABLED);
            sessions = base.newKieSessionsPool(1);
            for (LoadedRule rule : rules) {
                cardsByRule.put(
                        new RuleName(rule.rule().getPackage(), rule.rule().getName()), rule.card());
            }
            try (EngineRun warmUp = start()) {
                warmUp.fireAll("warm-up");
            }
        } catch (RulebaseException e) {
            throw e;
        } catch (RuntimeException e) {
            throw new RulebaseException("The rules cannot be built: " + e.getMessage(), e);
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    /** A new run, to be closed. */
    public EngineRun start() {
        return new EngineRun(sessions.newKieSession(), cardsByRule);
    }

    /** By what the engine knows a rule. */
    record RuleName(String packageName, String name) {
        static RuleName of(org.kie.api.definition.rule.Rule rule) {
            return new RuleName(rule.getPackageName(), rule.getName());
        }
    }

    private static List<Model> models(List<LoadedRule> rules) {
        Map<String, List<Rule>> byPackage = new LinkedHashMap<>();
        for (LoadedRule rule : rules) {
            byPackage
                    .computeIfAbsent(rule.rule().getPackage(), name -> new ArrayList<>())
                    .add(rule.rule());
        }
        List<Model> models = new ArrayList<>();
        byPackage.forEach((name, members) -> models.add(new ModelImpl(name).withRules(members)));
        return models;
    }
}
