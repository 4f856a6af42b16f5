package stoneprocess.examples.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;

/** Says what other facts would bring. */
@Command(
        name = "what-if",
        description = "Plans the floor of a survey, and plans it again with other facts, and says what differs.",
        footer = {
            "",
            "FIELD=VALUE is for example owner.goal=hone, build-up.thickness=\"30 mm\","
                    + " equipment.machines=single-disc,edge-tool, lanes/damages.scratches=\"seen, 40 %%\"."
                    + " unknown forgets an answer, none empties a list."
        })
final class WhatIfCommand extends ConsoleCommand {
    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "FIELD=VALUE",
            description = "A fact made another; may be repeated.")
    private List<String> changes = new ArrayList<>();

    @Mixin
    private AnswerForm form = new AnswerForm();

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        List<FieldChange> read = changes.stream().map(FieldChange::parse).toList();
        FloorSurvey before = survey(survey);
        FloorSurvey after = before;
        for (FieldChange change : read) {
            after = change.in(after, advisor.options().sequence());
        }
        Recommendation now = advisor.recommend(before);
        Recommendation then = advisor.recommend(after);
        form.print(
                console(),
                Json.DIFFERENCE,
                Difference.between(now, then),
                (answers, difference) ->
                        answers.document(now, then, advisor.rulebase().cards()));
        return ExitCode.DONE;
    }
}
