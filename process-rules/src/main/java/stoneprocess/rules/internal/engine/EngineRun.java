package stoneprocess.rules.internal.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.Match;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Stage;

/**
 * One run over one session. Facts go in, stages fire, and every contribution comes out stamped with its rule and the
 * facts that the engine matched. Not safe to share between threads; always closed.
 */
public final class EngineRun implements StageRun {
    /** More firings than this in one stage mean that the rules do not end. */
    static final int CAP = 10_000;

    private final KieSession session;
    private final Map<Engine.RuleName, Card> cardsByRule;
    private final List<Firing> firings = new ArrayList<>();
    private int contributionsOfMatch;

    EngineRun(KieSession session, Map<Engine.RuleName, Card> cardsByRule) {
        this.session = session;
        this.cardsByRule = cardsByRule;
        Stamp stamp = new Stamp();
        session.addEventListener(stamp.agenda);
        session.addEventListener(stamp.runtime);
    }

    @Override
    public void insert(Object fact) {
        session.insert(fact);
    }

    @Override
    public List<Firing> fire(Stage stage) {
        return fireAll(stage.key());
    }

    List<Firing> fireAll(String agendaGroup) {
        firings.clear();
        session.getAgenda().getAgendaGroup(agendaGroup).setFocus();
        int fired = fired(agendaGroup);
        if (fired >= CAP) {
            throw new RulebaseException("Stage " + agendaGroup + " did not end within " + CAP + " firings");
        }
        return List.copyOf(firings);
    }

    private int fired(String agendaGroup) {
        try {
            return session.fireAllRules(CAP);
        } catch (RulebaseException e) {
            throw e;
        } catch (RuntimeException e) {
            // The engine wraps what a consequence throws, our own complaints about it included.
            if (e.getCause() instanceof RulebaseException ours) {
                throw ours;
            }
            throw new RulebaseException("Stage " + agendaGroup + " failed: " + e.getMessage(), e);
        }
    }

    @Override
    public void close() {
        session.dispose();
    }

    private Card card(Match match) {
        return cardsByRule.get(Engine.RuleName.of(match.getRule()));
    }

    private final class Stamp {
        private List<Object> matched = List.of();

        private final DefaultAgendaEventListener agenda = new DefaultAgendaEventListener() {
            @Override
            public void beforeMatchFired(BeforeMatchFiredEvent event) {
                matched = List.copyOf(event.getMatch().getObjects());
                contributionsOfMatch = 0;
            }

            @Override
            public void afterMatchFired(AfterMatchFiredEvent event) {
                if (contributionsOfMatch != 1) {
                    throw new RulebaseException("Rule " + card(event.getMatch()).id() + " made " + contributionsOfMatch
                            + " contributions in one firing; a rule makes one");
                }
            }
        };

        private final DefaultRuleRuntimeEventListener runtime = new DefaultRuleRuntimeEventListener() {
            @Override
            public void objectInserted(ObjectInsertedEvent event) {
                if (event.getRule() == null) {
                    return;
                }
                Card card = cardsByRule.get(Engine.RuleName.of(event.getRule()));
                if (!(event.getObject() instanceof Contribution contribution)) {
                    throw new RulebaseException("Rule " + card.id() + " inserted something that is no contribution");
                }
                if (contribution.topic() != card.topic()) {
                    throw new RulebaseException("Rule " + card.id() + " speaks to topic "
                            + contribution.topic().id() + " and its card says " + card.topic());
                }
                contributionsOfMatch++;
                firings.add(new Firing(card, contribution, matched));
            }
        };
    }
}
