package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The schemas under docs/schema say the same as the reader: same keys, same required keys, and they
 * take real books.
 */
class SchemaTest {
    private static final Path SCHEMAS = Path.of("docs/schema");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7);
    private final Map<String, Schema> schemas = new HashMap<>();

    @Test
    void everyForm_hasTheSameKeysInItsSchema() throws IOException {
        for (Form form : Form.values()) {
            String[] where = form.schema().split("#");
            JsonNode definition = json(where[0]).at("/$defs/" + where[1]);
            assertThat(definition.isMissingNode()).as(form.schema()).isFalse();
            assertThat(definition.get("additionalProperties").asBoolean(true))
                    .as(form + " refuses unknown keys").isFalse();
            assertThat(names(definition.get("properties"))).as(form + " keys")
                    .isEqualTo(new TreeSet<>(form.known()));
            TreeSet<String> required = new TreeSet<>();
            definition.get("required").forEach(r -> required.add(r.asText()));
            assertThat(required).as(form + " required").isEqualTo(new TreeSet<>(form.required()));
        }
    }

    @Test
    void noSchema_describesAThingThatTheReaderDoesNotKnow() throws IOException {
        TreeSet<String> described = new TreeSet<>();
        for (FileKind kind : FileKind.values()) {
            if (kind != FileKind.LIST && kind != FileKind.ON_HAND) {
                String file = kind.name().toLowerCase(Locale.ROOT);
                json(file).get("$defs").properties().forEach(d -> {
                    if (d.getValue().has("properties")) {
                        described.add(file + "#" + d.getKey());
                    }
                });
            }
        }
        described.remove("kitchen#place");
        described.remove("kitchen#contact");
        TreeSet<String> known = new TreeSet<>();
        List.of(Form.values()).forEach(f -> known.add(f.schema()));
        assertThat(described).isEqualTo(known);
    }

    @Test
    void sampleKitchens_fitTheirSchemas() {
        assertThat(misfits(SmallKitchen.files(SmallKitchen.FOLDER))).isEmpty();
        assertThat(misfits(SmallKitchen.files(SmallKitchen.WORTH_ONLY))).isEmpty();
    }

    /** The demo book at the repository's root. */
    @Test
    void demoBook_fitsItsSchemas() {
        SortedMap<String, byte[]> files = new TreeMap<>();
        BookFolder.FOLDERS.stream().map(Path::of).filter(Files::isDirectory).forEach(folder ->
                SmallKitchen.files(folder).forEach((path, content) ->
                files.put(folder + "/" + path, content)));
        assertThat(files).isNotEmpty();
        assertThat(misfits(files)).isEmpty();
    }

    @Test
    void whatTheReaderRefusesInOneValue_theSchemaRefusesToo() {
        assertThat(misfits(new SmallKitchen().change("recipes/dishes.yaml", "price: $9.50", "price: 9.50")
                .files())).isNotEmpty();
        assertThat(misfits(new SmallKitchen().change("recipes/dishes.yaml", "price:", "prise:").files()))
                .isNotEmpty();
        assertThat(misfits(new SmallKitchen().change("farms/hollow-brook.yaml", "from: W22", "from: W2")
                .files())).isNotEmpty();
        assertThat(misfits(new SmallKitchen().change("kitchen/kitchen.yaml", "$150 each", "$150").files()))
                .isNotEmpty();
        assertThat(misfits(new SmallKitchen().change("kitchen/ingredients/fresh.yaml", "allergens: none",
                "allergens: milk").files())).isNotEmpty();
        assertThat(misfits(new SmallKitchen().change("seasons/events.yaml", "share: 70%", "share: 0.7")
                .files())).isNotEmpty();
    }

    private List<String> misfits(SortedMap<String, byte[]> files) {
        List<String> misfits = new ArrayList<>();
        files.forEach((path, content) -> FileKind.of(path).filter(k -> path.endsWith(".yaml"))
                .ifPresent(kind -> {
            Notebook notebook = new Notebook();
            Node root = new YamlText(path, notebook).read(new String(content, StandardCharsets.UTF_8))
                    .orElseThrow();
            for (Error error : schemas.computeIfAbsent(kind.name().toLowerCase(Locale.ROOT), this::schema)
                    .validate(json(root))) {
                misfits.add(path + ": " + error);
            }
        }));
        return misfits;
    }

    private Schema schema(String file) {
        return REGISTRY.getSchema(json(file));
    }

    private static JsonNode json(String file) {
        try {
            return JSON.readTree(Files.readString(SCHEMAS.resolve(file + ".schema.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every scalar a text, as the reader sees it. */
    private static JsonNode json(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return JsonNodeFactory.instance.textNode(scalar.text());
        }
        if (node instanceof Node.Sequence sequence) {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            sequence.items().forEach(i -> array.add(json(i)));
            return array;
        }
        if (node instanceof Node.Mapping mapping) {
            ObjectNode object = JsonNodeFactory.instance.objectNode();
            mapping.pairs().forEach(p -> object.set(p.key().text(), json(p.value())));
            return object;
        }
        return JsonNodeFactory.instance.nullNode();
    }

    private static TreeSet<String> names(JsonNode object) {
        TreeSet<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
