package org.mantice.file;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import org.mantice.editing.TuneEdit;
import org.mantice.pattern.Accompaniment;
import org.mantice.pattern.AccompanimentJson;
import org.mantice.plan.Lock;
import org.mantice.tune.MusicalTime;

/** How the records of a plan become trees of JSON and back. */
final class PlanJson {
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "lock")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Lock.Register.class, name = "register"),
        @JsonSubTypes.Type(value = Lock.Octave.class, name = "octave"),
        @JsonSubTypes.Type(value = Lock.Buttons.class, name = "buttons"),
        @JsonSubTypes.Type(value = Lock.Turn.class, name = "turn"),
        @JsonSubTypes.Type(value = Lock.Finger.class, name = "finger")
    })
    private interface LockKinds {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "edit")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = TuneEdit.SetChord.class, name = "set-chord"),
        @JsonSubTypes.Type(value = TuneEdit.MoveChord.class, name = "move-chord"),
        @JsonSubTypes.Type(value = TuneEdit.RemoveChord.class, name = "remove-chord"),
        @JsonSubTypes.Type(value = TuneEdit.ProposeChords.class, name = "propose-chords"),
        @JsonSubTypes.Type(value = TuneEdit.AcceptChord.class, name = "accept-chord"),
        @JsonSubTypes.Type(value = TuneEdit.AcceptChords.class, name = "accept-chords"),
        @JsonSubTypes.Type(value = TuneEdit.DismissProposals.class, name = "dismiss-proposals"),
        @JsonSubTypes.Type(value = TuneEdit.SetPhrase.class, name = "set-phrase"),
        @JsonSubTypes.Type(value = TuneEdit.SetBarlines.class, name = "set-barlines"),
        @JsonSubTypes.Type(value = TuneEdit.SetTempo.class, name = "set-tempo"),
        @JsonSubTypes.Type(value = TuneEdit.SetKey.class, name = "set-key")
    })
    private interface EditKinds {}

    private PlanJson() {}

    static JsonMapper mapper() {
        return JsonMapper.builder()
                .addModule(new Jdk8Module())
                .addModule(new SimpleModule()
                        .addSerializer(new TimeWriter())
                        .addDeserializer(MusicalTime.class, new TimeReader())
                        .addSerializer(new LeftHandWriter())
                        .addDeserializer(Accompaniment.class, new LeftHandSkipper()))
                .addMixIn(Lock.class, LockKinds.class)
                .addMixIn(TuneEdit.class, EditKinds.class)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .build();
    }

    private static final class TimeWriter extends StdSerializer<MusicalTime> {
        TimeWriter() {
            super(MusicalTime.class);
        }

        @Override
        public void serialize(MusicalTime time, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeString(time.toString());
        }
    }

    private static final class TimeReader extends StdDeserializer<MusicalTime> {
        TimeReader() {
            super(MusicalTime.class);
        }

        @Override
        public MusicalTime deserialize(JsonParser in, DeserializationContext context) throws IOException {
            String text = in.getValueAsString("");
            if (!text.matches("-?\\d{1,18}(/\\d{1,18})?"))
                return (MusicalTime) context.handleWeirdStringValue(
                        MusicalTime.class, text, "allowed: a whole number or a fraction such as 3/4");
            int slash = text.indexOf('/');
            if (slash < 0) return MusicalTime.of(Long.parseLong(text), 1);
            return MusicalTime.of(Long.parseLong(text.substring(0, slash)), Long.parseLong(text.substring(slash + 1)));
        }
    }

    private static final class LeftHandWriter extends StdSerializer<Accompaniment> {
        LeftHandWriter() {
            super(Accompaniment.class);
        }

        @Override
        public void serialize(Accompaniment asked, JsonGenerator out, SerializerProvider provider) throws IOException {
            provider.defaultSerializeValue(AccompanimentJson.tree(asked), out);
        }
    }

    /** Passes over it: {@link PlanReader} reads it field by field. */
    private static final class LeftHandSkipper extends StdDeserializer<Accompaniment> {
        LeftHandSkipper() {
            super(Accompaniment.class);
        }

        @Override
        public Accompaniment deserialize(JsonParser in, DeserializationContext context) throws IOException {
            in.skipChildren();
            return Accompaniment.NONE;
        }
    }
}
