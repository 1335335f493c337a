package lozengy.model.arrangement;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import lozengy.model.brief.BriefWriter;
import lozengy.model.brief.PartWorked;
import lozengy.model.input.JsonText;

/** Writes a diary, one mark a line; what is empty is left out. */
final class DiaryWriter {

  private final JsonText json;

  private DiaryWriter(JsonText json) {
    this.json = json;
  }

  /** Writes one item of a list. */
  private interface Item<T> {
    void write(JsonText json, T item) throws IOException;
  }

  /** Writes the field of an arrangement; one in which nothing was marked since goes without. */
  static void write(JsonText json, Arrangement arrangement) throws IOException {
    Diary diary = arrangement.diary();
    if (!diary.equals(Diary.begun(arrangement.blanket(), arrangement.sequences()))) {
      new DiaryWriter(json).write(diary);
    }
  }

  private void write(Diary diary) throws IOException {
    json.field("diary").tallMapping();
    parts("worked_when_planned", diary.workedWhenPlanned());
    json.field("entries").tallList();
    for (Diary.Entry entry : diary.entries()) {
      entry(entry);
    }
    json.endList().endMapping();
  }

  private void entry(Diary.Entry entry) throws IOException {
    json.mapping();
    if (entry.on().isPresent()) {
      json.field("on").text(entry.on().get().toString());
    }
    names("planned", entry.planned());
    parts("part_worked", entry.partWorked());
    names("made", entry.made());
    names("joined", entry.joined());
    names("otherwise", entry.otherwise());
    items(
        "yarns",
        entry.yarns(),
        (to, event) -> {
          to.mapping();
          to.field("what").text(event.what().word());
          to.field("code").text(event.code());
          if (event.amount().isPresent()) {
            to.field("amount").text(BriefWriter.amount(event.amount().get()));
          }
          if (event.weighed().isPresent()) {
            Diary.YarnEvent.Weighed weighed = event.weighed().get();
            to.field("gone_mm").number(weighed.goneMillimetres());
            to.field("reckoned_mm").number(weighed.reckonedMillimetres());
          }
          to.endMapping();
        });
    json.field("pieces").number(entry.pieces());
    json.field("rounds").number(entry.rounds());
    if (entry.minutes().isPresent()) {
      json.field("minutes").number(entry.minutes().get());
    }
    if (entry.handPercent().isPresent()) {
      json.field("hand").text(percent(entry.handPercent().get()));
    }
    if (entry.before().isPresent()) {
      before(entry.before().get());
    }
    json.endMapping();
  }

  private void before(Reversal before) throws IOException {
    json.field("before").mapping();
    items(
        "pieces",
        before.pieces(),
        (to, piece) -> {
          to.mapping().field("at").text(piece.at());
          names("rounds", piece.rounds());
          to.endMapping();
        });
    edits("notes", before.notes(), BriefWriter::note);
    edits("yarns", before.yarns(), BriefWriter::yarn);
    edits("pile", before.pile(), BriefWriter::pileEntry);
    if (before.hand().isPresent()) {
      json.field("hand").mapping();
      json.field("out").text(percent(before.hand().get().out()));
      json.field("in").text(percent(before.hand().get().in()));
      json.endMapping();
    }
    ArrangementWriter.bound(json, before.bound());
    ArrangementWriter.solved(json, before.solved());
    json.endMapping();
  }

  private static String percent(BigDecimal percent) {
    return JsonText.shortest(percent) + " %";
  }

  private <T> void edits(String field, List<Edit<T>> edits, Item<T> item) throws IOException {
    items(
        field,
        edits,
        (to, edit) -> {
          to.mapping();
          to.field("from").number(edit.from());
          items("out", edit.out(), item);
          items("in", edit.in(), item);
          to.endMapping();
        });
  }

  private void parts(String field, List<PartWorked> parts) throws IOException {
    items(
        field,
        parts,
        (to, part) -> {
          to.mapping().field("rounds_worked").number(part.rounds());
          names("at", part.at());
          to.endMapping();
        });
  }

  private void names(String field, List<String> names) throws IOException {
    items(field, names, (to, name) -> to.text(name));
  }

  private <T> void items(String field, List<T> items, Item<T> item) throws IOException {
    if (items.isEmpty()) {
      return;
    }
    json.field(field).list();
    for (T each : items) {
      item.write(json, each);
    }
    json.endList();
  }
}
