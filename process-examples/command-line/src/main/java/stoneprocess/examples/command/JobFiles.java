package stoneprocess.examples.command;

import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.FollowText;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.document.Texts;

/**
 * The survey and the job log that follow and diagnose read.
 *
 * @param console where they are read and answers printed
 * @param advisor who plans
 */
record JobFiles(Console console, Advisor advisor) {
    Recommendation plan(String survey) {
        return advisor.recommend(Json.SURVEY.read(console.read(survey)));
    }

    JobLog log(String log) {
        return Json.JOB_LOG.read(console.read(log));
    }

    static boolean cutsNothing(Recommendation plan) {
        return plan.plan().map(known -> known.tracks().isEmpty()).orElse(true);
    }

    /** Without grits to work there is nothing to follow: the plan itself is the answer. */
    int nothingToFollow(Recommendation plan, boolean json, Texts texts) {
        if (json) {
            console.print(Json.RECOMMENDATION.print(plan));
        } else {
            PlanText text = new PlanText(advisor.rulebase().cards());
            console.print(texts.page(FollowText.nothing(plan)) + "\n" + texts.page(text.document(plan, Detail.BRIEF)));
        }
        return ExitCode.NO_PLAN;
    }
}
