package stoneprocess.rules.text;

import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.answer.WhatElse;

/** How a floor would get a value, and what is worth finding out, in words. */
final class WayWords {
    private static final int TOPICS_SHOWN = 5;
    private static final String INDENT = "     ";

    private final AnswerWords words;

    WayWords(AnswerWords words) {
        this.words = words;
    }

    String full(HowTo howTo) {
        Page page = new Page();
        page.title(words.get("how-to.title", matter(howTo), wanted(howTo)));
        page.line(words.phrases.of(howTo.kind()));
        if (howTo.kind() != WayKind.FOUND) {
            return page.toString();
        }
        ways(page, "how-to.people", howTo.ways().stream().filter(Way::byPeople));
        ways(page, "how-to.nature", howTo.ways().stream().filter(way -> !way.byPeople()));
        page.heading(words.phrases.get("closing.heading"));
        page.line(words.phrases.get("how-to.mind"));
        return page.toString();
    }

    private void ways(Page page, String heading, Stream<Way> ways) {
        List<Way> listed = ways.toList();
        if (listed.isEmpty()) {
            return;
        }
        page.heading(words.phrases.get(heading));
        for (int i = 0; i < listed.size(); i++) {
            List<Change> changes = listed.get(i).changes();
            page.numbered(i + 1, words.fields.change(changes.get(0)) + ". " + words.fields.who(changes.get(0)));
            changes.subList(1, changes.size())
                    .forEach(change -> page.labelled(
                            INDENT,
                            words.phrases.get("how-to.and"),
                            words.fields.change(change) + ". " + words.fields.who(change)));
        }
    }

    private String matter(HowTo howTo) {
        return words.values.matter(howTo.topic(), howTo.subject());
    }

    private String wanted(HowTo howTo) {
        return words.values.value(howTo.topic(), howTo.wanted());
    }

    String brief(HowTo howTo) {
        String start = matter(howTo) + ", " + wanted(howTo) + ": ";
        if (howTo.kind() != WayKind.FOUND) {
            return AnswerWords.shortest(
                    start + words.phrases.of(howTo.kind()),
                    wanted(howTo) + ": " + words.phrases.of(howTo.kind()),
                    words.phrases.of(howTo.kind()));
        }
        List<Change> changes = howTo.ways().get(0).changes();
        String all =
                String.join("; ", changes.stream().map(words.fields::change).toList());
        String more = howTo.ways().size() == 1
                ? ""
                : " " + words.get("how-to.more", howTo.ways().size() - 1);
        String questions = String.join(
                " ",
                changes.stream()
                        .map(change -> words.fields.question(change.name()))
                        .toList());
        return AnswerWords.shortest(
                start + all + "." + more,
                wanted(howTo) + ": " + all + "." + more,
                wanted(howTo) + ": " + words.get("how-to.change", questions),
                words.get("how-to.change", questions),
                words.get("how-to.count", changes.size(), howTo.ways().size()));
    }

    String full(WhatElse whatElse) {
        Page page = new Page();
        page.title(words.phrases.get("what-else.title"));
        if (whatElse.open().isEmpty()) {
            page.line(words.phrases.get("what-else.nothing"));
            return page.toString();
        }
        page.line(words.get("what-else.count", whatElse.open().size()));
        page.heading(words.phrases.get("what-else.heading"));
        for (int i = 0; i < whatElse.open().size(); i++) {
            WhatElse.Open open = whatElse.open().get(i);
            page.numbered(i + 1, words.fields.question(open.field()) + " " + words.fields.howFound(open.field()));
            page.labelled(INDENT, words.phrases.get("what-else.changes"), topics(open.topics()));
        }
        return page.toString();
    }

    private String topics(List<String> ids) {
        int shown = ids.size() > TOPICS_SHOWN + 1 ? TOPICS_SHOWN : ids.size();
        String listed = String.join(
                ", ", ids.subList(0, shown).stream().map(words.values::topic).toList());
        return shown == ids.size() ? listed : words.get("what-else.more", listed, ids.size() - shown);
    }

    String brief(WhatElse whatElse) {
        if (whatElse.open().isEmpty()) {
            return words.phrases.get("what-else.nothing");
        }
        WhatElse.Open first = whatElse.open().get(0);
        String question = words.fields.question(first.field());
        return AnswerWords.shortest(
                words.get(
                        "what-else.brief",
                        question,
                        first.topics().size(),
                        whatElse.open().size() - 1),
                words.get("what-else.first", question));
    }
}
