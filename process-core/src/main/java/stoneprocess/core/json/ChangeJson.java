package stoneprocess.core.json;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.answer.Change;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.ChangedBy;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;

/** One change of a survey. Who can bring it about is printed for readers and checked when it is read back. */
final class ChangeJson {
    private static final String ANSWER = "answer";
    private static final String MEMBER = "member";
    private static final String DAMAGE = "damage";

    private ChangeJson() {}

    static Object tree(Change change) {
        Fields fields = new Fields();
        if (change instanceof Change.OfAnswer answer) {
            fields.put("change", ANSWER)
                    .put("field", answer.field().name())
                    .putIf("from", answer.from().map(SurveyJson::print))
                    .put("to", SurveyJson.print(answer.to()))
                    .put("class-steps", answer.classSteps());
        } else if (change instanceof Change.OfMember member) {
            fields.put("change", MEMBER)
                    .put("field", member.field().name())
                    .put("member", SurveyJson.print(member.member()))
                    .put("added", member.added());
        } else {
            Change.OfDamage damage = (Change.OfDamage) change;
            fields.put("change", DAMAGE)
                    .put("zone", damage.zone())
                    .put("kind", damage.kind().key())
                    .putIf("from", damage.from().map(SurveyJson::damage))
                    .put("to", SurveyJson.damage(damage.to()))
                    .put("class-steps", damage.classSteps());
        }
        return fields.put("changed-by", change.changedBy().key()).tree();
    }

    static Change read(Node node, GritSequence sequence) {
        Node kind = node.get("change");
        Change change = switch (kind.text()) {
            case ANSWER -> answer(node, sequence);
            case MEMBER -> member(node, sequence);
            case DAMAGE -> damage(node);
            default ->
                throw new InvalidInputException(
                        kind.path(), kind.text(), "one of " + String.join(", ", ANSWER, MEMBER, DAMAGE));
        };
        Node changedBy = node.get("changed-by");
        if (changedBy.term(ChangedBy.class) != change.changedBy()) {
            throw new InvalidInputException(
                    changedBy.path(), changedBy.text(), change.changedBy().key() + ", as the field has it");
        }
        return change;
    }

    private static Change answer(Node node, GritSequence sequence) {
        node.only(List.of("change", "field", "from", "to", "class-steps", "changed-by"));
        SurveyField<?> field = field(node);
        Optional<Object> from = node.optional("from").map(value -> SurveyJson.value(value, field.kind(), sequence));
        Object to = SurveyJson.value(node.get("to"), field.kind(), sequence);
        int steps = node.get("class-steps").integer(1);
        return node.checkedParts(() -> new Change.OfAnswer(field, from, to, steps));
    }

    private static Change member(Node node, GritSequence sequence) {
        node.only(List.of("change", "field", "member", "added", "changed-by"));
        SurveyField<?> field = field(node);
        Node member = node.get("member");
        Node alone = new Node(member.path(), List.of(member.value()));
        Object typed = SurveyJson.value(alone, field.kind(), sequence);
        if (!(typed instanceof Iterable<?> members)) {
            throw new InvalidInputException(
                    node.get("field").path(), field.name(), "a field that takes a set or a list");
        }
        boolean added = node.get("added").flag();
        return node.checkedParts(
                () -> new Change.OfMember(field, members.iterator().next(), added));
    }

    private static Change damage(Node node) {
        node.only(List.of("change", "zone", "kind", "from", "to", "class-steps", "changed-by"));
        DamageKind kind = node.get("kind").term(DamageKind.class);
        Optional<Damage> from = node.optional("from").map(damage -> SurveyJson.damage(damage, node, kind));
        Damage to = SurveyJson.damage(node.get("to"), node, kind);
        String zone = node.get("zone").text();
        int steps = node.get("class-steps").integer(1);
        return node.checkedParts(() -> new Change.OfDamage(zone, kind, from, to, steps));
    }

    private static SurveyField<?> field(Node node) {
        Node name = node.get("field");
        return name.checked(() -> SurveyField.named(name.text()));
    }
}
