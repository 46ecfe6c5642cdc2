/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import com.google.gson.JsonObject;
import hullwright.analysis.serial.CountedSentence;
import hullwright.analysis.serial.LineUse;
import hullwright.analysis.serial.SentenceLeftOut;
import hullwright.analysis.serial.SentenceOnLine;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.Waiting;
import hullwright.report.JsonText;

/**
 * A serial line as JSON; a sentence is told by its formatter, its talker and what tells it apart from others.
 */
final class SerialJson {

	private SerialJson() {
	}

	static JsonObject of(SerialLineFigures figures) {
		JsonObject json = new JsonObject();
		json.addProperty("line", figures.line().name());
		RecordJson.add(json, "rate", figures.rate().rate());
		json.addProperty("rateBasis", JsonText.word(figures.rate().basis()));
		RecordJson.add(json, "regular", figures.load().regular());
		RecordJson.add(json, "events", figures.load().events());
		json.addProperty("busiestSecond", figures.load().busiestSecond());
		figures.use().ifPresent(each -> json.add("use", use(each)));
		waiting(json, figures);
		RecordJson.add(json, "ais", figures.ais());
		json.add("leftOut", JsonText.array(figures.load().leftOut(), SerialJson::leftOut));
		RecordJson.add(json, "drives", figures.drives());
		RecordJson.add(json, "joints", figures.joints());
		RecordJson.add(json, "buffers", figures.buffers());
		json.addProperty("earthsShield", figures.line().earthsShield());
		RecordJson.add(json, "problems", figures.problems());
		RecordJson.add(json, "assumptions", figures.assumptions());
		return json;
	}

	private static JsonObject use(LineUse use) {
		JsonObject json = new JsonObject();
		RecordJson.add(json, "carries", use.carries());
		RecordJson.add(json, "regular", use.regular());
		RecordJson.add(json, "withEvents", use.withEvents());
		RecordJson.add(json, "busiestSecond", use.busiestSecond());
		RecordJson.add(json, "margin", use.margin());
		return json;
	}

	private static void waiting(JsonObject json, SerialLineFigures figures) {
		if (figures.waiting() instanceof Waiting.Bounded bounded) {
			json.addProperty("backlog", bounded.backlog());
			RecordJson.add(json, "longest", bounded.longest());
			RecordJson.add(json, "run", bounded.run());
			json.add("sentences", JsonText.array(bounded.sentences(), SerialJson::waiting));
		} else {
			json.addProperty("noBound", JsonText.word(((Waiting.Unbounded) figures.waiting()).reason()));
			json.add("sentences", JsonText.array(figures.load().counted(), SerialJson::sentence));
		}
	}

	private static JsonObject waiting(Waiting.OfSentence sentence) {
		JsonObject json = sentence(sentence.sentence());
		RecordJson.add(json, "waits", sentence.waits());
		RecordJson.add(json, "done", sentence.done());
		return json;
	}

	private static JsonObject sentence(CountedSentence counted) {
		JsonObject json = told(counted.sentence());
		json.addProperty("characters", counted.characters());
		json.addProperty("regular", counted.regular());
		RecordJson.add(json, "interval", counted.interval());
		return json;
	}

	private static JsonObject leftOut(SentenceLeftOut sentence) {
		JsonObject json = told(sentence.sentence());
		json.addProperty("count", sentence.count());
		json.addProperty("reason", JsonText.word(sentence.reason()));
		return json;
	}

	private static JsonObject told(SentenceOnLine sentence) {
		JsonObject json = new JsonObject();
		json.addProperty("sentence", sentence.sentence().formatter());
		json.addProperty("talker", sentence.talker());
		sentence.use().value().ifPresent(value -> json.addProperty("as", value.value()));
		return json;
	}
}
