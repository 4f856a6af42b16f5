package stoneprocess.examples.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import stoneprocess.core.json.Json;
import stoneprocess.core.quantity.Share;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.RulesJson;
import stoneprocess.rules.overlay.Overlay;

/** Inputs that the doors understand, for a mutator to begin with, and those that once came through wrongly. */
final class Seeds {
    private static final Path FOUND = Path.of("command-line/src/test/resources/fuzz");

    private Seeds() {}

    static List<byte[]> of(HostileInput door) {
        List<byte[]> seeds = new ArrayList<>();
        switch (door) {
            case SURVEY -> texts("surveys").forEach(text -> seeds.add(bytes(text)));
            case ANSWERS -> {
                for (int i = 0; i < 256; i += 8) {
                    seeds.add(new byte[] {(byte) i, (byte) (i + 1), (byte) (i + 2), (byte) (i + 3), 0});
                }
            }
            case JOB_LOG -> texts("logs").forEach(text -> seeds.add(bytes(text)));
            case HOUSE_RULES ->
                seeds.add(bytes(RulesJson.OVERLAY.print(Overlay.none()
                        .switchOff("UPK-006", "the master", "nobody burnishes")
                        .retune("night.share", new Share(30), "the master", "nights are dear"))));
            case PRICE_LIST -> seeds.add(bytes(HostileInput.sample("prices/harbour-crew.json")));
            case STORED ->
                texts("surveys")
                        .limit(3)
                        .forEach(text -> seeds.add(bytes(Json.RECOMMENDATION
                                .compact()
                                .print(Advisor.standard().recommend(Json.SURVEY.read(text))))));
            case COMMAND -> {
                String survey = HostileInput.sample("surveys/boat-shed-concrete.json");
                Stream.of(
                                "plan -",
                                "plan - --full",
                                "why - first-cut",
                                "why-not - grit-path metal-50",
                                "estimate - --crew=2 --edges=30m",
                                "exposure carbon-monoxide --power=5kW --room=300m3 --air-changes=1/h --time=2h",
                                "gloss - --after=400 --reads=\"12 GU\"",
                                "schema survey",
                                "form")
                        .forEach(line -> seeds.add(bytes(line + "\n" + survey)));
            }
        }
        found(door).forEach(seeds::add);
        return seeds;
    }

    private static Stream<byte[]> found(HostileInput door) {
        Path folder = FOUND.resolve(door.name().toLowerCase(Locale.ROOT));
        return Files.isDirectory(folder) ? files(folder).map(Seeds::read) : Stream.of();
    }

    private static Stream<String> texts(String folder) {
        return files(Path.of(folder)).map(path -> HostileInput.sample(path.toString()));
    }

    private static Stream<Path> files(Path folder) {
        try (Stream<Path> listed = Files.list(folder)) {
            return listed.sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
