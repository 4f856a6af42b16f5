package stoneprocess.rules.audit;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.rules.Advisor;

/**
 * Which numbers anything reads. Names are looked for among the texts that stand in the compiled classes of the library
 * and in its phrases: the whole name, the name of its range, a text that is put together with others to the name, or a
 * scale or table of which the name is one line.
 */
final class ParameterUse {
    private static final Pattern PHRASE = Pattern.compile("\\{(?:value|range):([^}]*)}");
    private static final Pattern NAME = Pattern.compile("[a-z0-9\\u0001.-]*[a-z]{3}[a-z0-9\\u0001.-]*");

    private final Set<String> texts = new HashSet<>();
    private final Set<Pattern> composed = new HashSet<>();

    /** The library on the class path. */
    static ParameterUse ofLibrary() {
        ParameterUse use = new ParameterUse();
        use.read(Parameters.class);
        use.read(Advisor.class);
        return use;
    }

    boolean reads(String name) {
        String range = name.replaceAll("\\.(low|high)$", "");
        if (texts.contains(name) || texts.contains(range)) {
            return true;
        }
        int dot = range.lastIndexOf('.');
        if (dot > 0 && (texts.contains(range.substring(0, dot)) || texts.contains(range.substring(0, dot + 1)))) {
            return true;
        }
        return composed.stream()
                .anyMatch(text ->
                        text.matcher(name).matches() || text.matcher(range).matches());
    }

    private void read(Class<?> type) {
        try {
            Path root = Path.of(
                    type.getProtectionDomain().getCodeSource().getLocation().toURI());
            if (Files.isDirectory(root)) {
                readAll(root);
            } else {
                try (FileSystem jar = FileSystems.newFileSystem(root)) {
                    readAll(jar.getPath("/"));
                }
            }
        } catch (IOException | java.net.URISyntaxException e) {
            throw new RulebaseException("The library's classes cannot be read", e);
        }
    }

    private void readAll(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = file.toString();
                if (name.endsWith(".class")) {
                    constants(Files.readAllBytes(file));
                } else if (name.endsWith(".properties") || name.endsWith(".drl")) {
                    Matcher phrase = PHRASE.matcher(Files.readString(file, StandardCharsets.UTF_8));
                    while (phrase.find()) {
                        texts.add(phrase.group(1));
                    }
                }
            }
        }
    }

    /** The texts among the constants of a class file, see The Java Virtual Machine Specification, 4.4. */
    private void constants(byte[] classFile) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(classFile))) {
            in.skipNBytes(8);
            int count = in.readUnsignedShort();
            for (int i = 1; i < count; i++) {
                int tag = in.readUnsignedByte();
                switch (tag) {
                    case 1 -> add(in.readUTF());
                    case 3, 4, 9, 10, 11, 12, 17, 18 -> in.skipNBytes(4);
                    case 5, 6 -> {
                        in.skipNBytes(8);
                        i++;
                    }
                    case 7, 8, 16, 19, 20 -> in.skipNBytes(2);
                    case 15 -> in.skipNBytes(3);
                    default -> throw new RulebaseException("A class file has a constant of the unknown kind " + tag);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void add(String text) {
        if (!NAME.matcher(text).matches()) {
            return;
        }
        if (text.indexOf('\u0001') < 0) {
            texts.add(text);
            return;
        }
        StringBuilder pattern = new StringBuilder();
        for (String part : List.of(text.split("((?<=\u0001)|(?=\u0001))"))) {
            pattern.append(part.equals("\u0001") ? "[a-z0-9.-]+" : Pattern.quote(part));
        }
        composed.add(Pattern.compile(pattern.toString()));
    }
}
