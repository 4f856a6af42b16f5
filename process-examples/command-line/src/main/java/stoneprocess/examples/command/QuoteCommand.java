package stoneprocess.examples.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stoneprocess.core.json.Json;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.site.Quotation;
import stoneprocess.core.site.QuotationRequest;
import stoneprocess.core.site.Variant;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.sheet.QuotationSheet;

/** Prices the floor of one survey. */
@Command(
        name = "quote",
        description = "Prices the floor of a survey, variants side by side, as a page or as data that can be sent.")
final class QuoteCommand extends ConsoleCommand {
    @Parameters(paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Option(
            names = "--prices",
            paramLabel = "FILE",
            required = true,
            description = "A price list in JSON, with risk, margin, tax, rounding and validity under terms.")
    private String prices = "";

    @Option(names = "--client", paramLabel = "TITLE", required = true, description = "Who asked.")
    private String client = "";

    @Option(
            names = "--date",
            paramLabel = "DATE",
            required = true,
            description = "The day on which it is sent, as the house writes it.")
    private String date = "";

    @Option(
            names = "--variant",
            paramLabel = "VARIANT",
            description = "A finish, as-planned, unsealed, repairs-only, waves-left or hired-planetary, or "
                    + "\"hone,unsealed\"; once for each. Without any, the ways that the floor offers.")
    private List<String> variants = new ArrayList<>();

    @Option(
            names = "--distance",
            paramLabel = "LENGTH",
            description = "One way to the site, such as \"25 km\", driven there and back on each working day.")
    private Optional<String> distance = Optional.empty();

    @Option(
            names = "--calculation",
            description = "Tell the house's own cost, risk and margin apart, which are not for the owner.")
    private boolean calculation;

    @Option(names = "--json", description = "Print the quotation as JSON and nothing else.")
    private boolean json;

    @Mixin
    private JobArguments job = new JobArguments();

    @Mixin
    private Reader reader = new Reader();

    @Override
    public Integer call() {
        requireOneStandardInput(survey, prices, "--prices", "the survey");
        Advisor advisor = Advisor.standard();
        FloorSurvey read = survey(survey);
        Quotation quotation = Quotation.of(
                read, request(read, advisor), Json.PRICE_LIST.read(console().read(prices)), advisor::recommend);
        console()
                .print(
                        json
                                ? Json.QUOTATION.print(quotation)
                                : reader.texts()
                                        .page(QuotationSheet.of(
                                                quotation, advisor.rulebase().parameters(), calculation)));
        return quotation.variants().stream().anyMatch(variant -> variant.job().isPresent())
                ? ExitCode.DONE
                : ExitCode.NO_PLAN;
    }

    private QuotationRequest request(FloorSurvey read, Advisor advisor) {
        QuotationRequest request = QuotationRequest.asPlanned(client, date)
                .withJob(job.options(read, advisor.rulebase().parameters()))
                .withTimings(job.timings(console()));
        request = request.withVariants(
                variants.isEmpty()
                        ? Variant.offered(advisor.recommend(read))
                        : variants.stream()
                                .map(text -> Variant.parse(text, "--variant"))
                                .toList());
        return distance.isPresent()
                ? request.withDistance(Amounts.quantity(distance.get(), "--distance", Length.class, "25 km"))
                : request;
    }
}
