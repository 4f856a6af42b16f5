package stoneprocess.examples.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import stoneprocess.core.problem.InvalidInputException;

/**
 * Where a command reads and writes. Output is UTF-8 with line feeds, whatever the machine prefers.
 *
 * @param in standard input
 * @param out standard output
 * @param err standard error
 */
record Console(InputStream in, PrintStream out, PrintStream err) {
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final long LARGEST_FILE = 64L * 1024 * 1024;

    /** The text of a file, or of standard input when the name is a hyphen. */
    String read(String name) {
        try {
            byte[] bytes = name.equals("-") ? in.readNBytes((int) LARGEST_FILE) : file(name);
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith(BYTE_ORDER_MARK) ? text.substring(BYTE_ORDER_MARK.length()) : text;
        } catch (NoSuchFileException e) {
            throw new InvalidInputException("file", name, "the path of a file that exists");
        } catch (CharacterCodingException e) {
            throw new InvalidInputException("file", name, "text in UTF-8");
        } catch (IOException | InvalidPathException e) {
            throw new InvalidInputException("file", name, "the path of a file that can be read");
        }
    }

    private static byte[] file(String name) throws IOException {
        Path path = Path.of(name);
        if (Files.size(path) > LARGEST_FILE) {
            throw new InvalidInputException("file", name, "a file of at most 64 MiB");
        }
        return Files.readAllBytes(path);
    }

    void print(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.write(bytes, 0, bytes.length);
        out.flush();
    }

    /** True when something that was printed did not get out: a disk is full, a pipe is closed. */
    boolean isOutputLost() {
        return out.checkError();
    }
}
