package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.site.GritDone;
import stoneprocess.core.site.PlannedGloss;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;

/** The gloss sheet and the follow-up foretell the same for the same work; they used to count 8 passes and 9. */
class OneForecastTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final List<Goal> GOALS = List.of(Goal.SATIN, Goal.SEMI_GLOSS, Goal.POLISH, Goal.HIGH_GLOSS);
    private static final int DRAWS = 12;

    private int compared;
    private int byFinerGrit;

    @Test
    void the_sheet_and_the_follow_up_tell_one_figure_on_samples_and_on_floors_drawn_from_them() throws IOException {
        for (FloorSurvey sample : samples()) {
            compare(ADVISOR.recommend(sample), new Random(1));
            for (int seed = 0; seed < DRAWS; seed++) {
                Random random = new Random(seed);
                compare(ADVISOR.recommend(drawn(sample, random)), random);
            }
        }
        assertThat(compared).as("hold points compared").isGreaterThan(2 * DRAWS);
        assertThat(byFinerGrit).as("reached by a later grit of the plan").isGreaterThan(3);
    }

    private static List<FloorSurvey> samples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("surveys"))) {
            List<FloorSurvey> samples = new ArrayList<>();
            for (Path file : files.sorted().toList()) {
                samples.add(Json.SURVEY.read(Files.readString(file)));
            }
            return samples;
        }
    }

    private static FloorSurvey drawn(FloorSurvey sample, Random random) {
        List<GlossReading> readings = new ArrayList<>();
        for (Zone zone : sample.zones()) {
            for (int i = random.nextInt(4); i > 0; i--) {
                readings.add(new GlossReading(
                        zone.name(), Geometry.DEG_60, new Gloss(2 + random.nextInt(25)), SurfaceState.CLEAN_DRY));
            }
        }
        return sample.toBuilder()
                .set(SurveyField.GOAL, GOALS.get(random.nextInt(GOALS.size())))
                .readings(readings)
                .build();
    }

    private void compare(Recommendation plan, Random random) {
        List<PlannedStep> steps = plan.plan().stream()
                .flatMap(planned -> planned.tracks().stream())
                .filter(track -> track.kind() == TrackKind.OPEN_FIELD)
                .map(Track::steps)
                .flatMap(List::stream)
                .toList();
        Optional<String> lanes = plan.survey().zones().stream()
                .filter(zone -> zone.kind() == ZoneKind.LANE || zone.kind() == ZoneKind.FIELD)
                .map(Zone::name)
                .findFirst();
        if (steps.isEmpty() || lanes.isEmpty()) {
            return;
        }
        List<GritDone> done = new ArrayList<>();
        List<Entry> entries = new ArrayList<>();
        int worked = 1 + random.nextInt(steps.size());
        double gloss = 4 + random.nextInt(8);
        for (PlannedStep step : steps.subList(0, worked)) {
            Moment moment = new Moment(1, 480 + 20 * entries.size());
            int passes = Math.max(1, step.passes().low() - random.nextInt(3));
            entries.add(new Entry.Worked(
                    moment, TrackKind.OPEN_FIELD, step.grade(), passes, Optional.empty(), Optional.empty()));
            List<Gloss> reads = List.of(new Gloss(gloss), new Gloss(gloss + 1));
            if (step.grade().bond() == Bond.RESIN) {
                done.add(new GritDone(step.grade().number(), passes, reads));
                reads.forEach(read -> entries.add(new Entry.Read(moment, reading(lanes.get(), read))));
            }
            gloss *= 1.2 + random.nextDouble();
        }
        Optional<TargetOutlook> followed = ADVISOR.followUp(plan, new JobLog("drawn", entries)).progress().stream()
                .flatMap(progress -> progress.outlook().stream())
                .findFirst();
        if (done.isEmpty() || followed.isEmpty()) {
            return;
        }
        PlannedGloss foretold = FloorGloss.of(plan, new GlossQuestion(Optional.empty(), new Gloss(2), lanes, done))
                .planned()
                .orElseThrow();
        TargetOutlook sheet = foretold.toTarget().orElseThrow().outlook();
        assertThat(followed.get().target()).isEqualTo(sheet.target());
        assertThat(followed.get().oldDamage()).isEqualTo(sheet.oldDamage());
        assertThat(followed.get().basis()).isEqualTo(sheet.basis());
        if (!foretold.toTarget().orElseThrow().beyond(foretold.lastGrit())) {
            assertThat(followed.get().reachedBy()).isEqualTo(sheet.reachedBy());
            byFinerGrit += sheet.verdict() == TargetVerdict.FINER_GRIT ? 1 : 0;
        }
        compared++;
    }

    private static Reading reading(String zone, Gloss gloss) {
        return new Reading("middle", zone, Direction.NOT_NOTED, Geometry.DEG_60, gloss, FaceState.CLEAN_DRY);
    }
}
