package org.swathbook.catalog.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.source.MapNode;

/**
 * The whole starter catalog in one file: its YAML parsed already, its tables as they are. Parsing
 * YAML takes longer than all the rest of a short command, and the starter is the same every time.
 */
final class StarterFile {
  /** Name of the file beside the folder it was made from. */
  static final String NAME = "starter.json";

  /** Files of the starter are shown to people under this folder. */
  private static final String SHOWN = "starter/";

  private final JsonFactory json = JsonFactory.builder().build();

  /** The file for these files of a folder. */
  byte[] write(List<CatalogFile> files) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator out = json.createGenerator(bytes)) {
      out.writeStartObject();
      for (CatalogFile f : files) {
        out.writeFieldName(f.path());
        if (f.folder().isEmpty() && !f.path().endsWith(".yaml")) {
          out.writeString(new String(f.content(), StandardCharsets.UTF_8));
        } else {
          NodeJson.write(f.keys(), out);
        }
        out.writeRaw('\n');
      }
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** The files that it was made from; those that were YAML hold their keys, not their bytes. */
  List<CatalogFile> read(byte[] content) {
    List<CatalogFile> files = new ArrayList<>();
    try (JsonParser in = json.createParser(content)) {
      in.nextToken();
      while (in.nextToken() == JsonToken.FIELD_NAME) {
        String path = in.currentName();
        String shown = shown(path);
        if (in.nextToken() == JsonToken.VALUE_STRING) {
          byte[] table = in.getText().getBytes(StandardCharsets.UTF_8);
          files.add(CatalogFile.of(path, shown, true, table));
        } else if (NodeJson.read(shown, in) instanceof MapNode keys) {
          files.add(CatalogFile.parsed(path, shown, true, keys));
        } else {
          throw new IllegalStateException(path + " of the starter holds no keys");
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  static String shown(String path) {
    return SHOWN + path;
  }
}
