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
    private static final int LARGEST_FILE = 64 * 1024 * 1024;

    /** The text of a file, or of standard input when the name is a hyphen. */
    String read(String name) {
        try {
            byte[] bytes = name.equals("-") ? all(name, in) : file(name);
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
        try (InputStream file = Files.newInputStream(Path.of(name))) {
            return all(name, file);
        }
    }

    /** Everything, or a refusal: what is longer than the limit is not cut, whether it is a file, a device or a pipe. */
    private static byte[] all(String name, InputStream source) throws IOException {
        byte[] bytes = source.readNBytes(LARGEST_FILE + 1);
        if (bytes.length > LARGEST_FILE) {
            throw new InvalidInputException("file", name, "at most " + LARGEST_FILE / (1024 * 1024) + " MiB");
        }
        return bytes;
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
