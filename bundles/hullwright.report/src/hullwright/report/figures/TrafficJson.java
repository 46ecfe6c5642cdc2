/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import com.google.gson.JsonObject;
import hullwright.analysis.traffic.BusFigures;
import hullwright.analysis.traffic.BusMessage;
import hullwright.analysis.traffic.LeftOut;
import hullwright.analysis.traffic.MessageResponse;
import hullwright.analysis.traffic.ResponseTime;
import hullwright.analysis.traffic.TrafficRate;
import hullwright.report.JsonText;

/**
 * The traffic of a network as JSON; a message is told by its number, its sender and what tells it apart from others.
 */
final class TrafficJson {

	private TrafficJson() {
	}

	static JsonObject of(BusFigures figures) {
		JsonObject json = new JsonObject();
		json.addProperty("network", figures.traffic().network());
		RecordJson.add(json, "bus", figures.load().bus());
		rate(json, "regular", figures.load().regular());
		rate(json, "events", figures.load().events());
		RecordJson.add(json, "busiestSecond", figures.load().busiestSecond());
		RecordJson.add(json, "powerUp", figures.powerUp());
		json.add("messages", JsonText.array(figures.responses().messages(), TrafficJson::message));
		json.add("leftOut", JsonText.array(figures.traffic().leftOut(), TrafficJson::leftOut));
		return json;
	}

	private static void rate(JsonObject json, String name, TrafficRate rate) {
		JsonObject inner = new JsonObject();
		inner.addProperty("framesPerSecond", rate.framesPerSecond());
		RecordJson.add(inner, "worst", rate.worst());
		RecordJson.add(inner, "typical", rate.typical());
		json.add(name, inner);
	}

	private static JsonObject message(MessageResponse response) {
		BusMessage message = response.message();
		JsonObject json = new JsonObject();
		json.addProperty("pgn", message.pgn().number());
		json.addProperty("sender", message.sender());
		message.value().ifPresent(value -> json.addProperty("as", value.value()));
		message.instance().ifPresent(instance -> json.addProperty("instance", instance));
		json.addProperty("regular", message.release().regular());
		RecordJson.add(json, "interval", message.release().interval());
		json.addProperty("frames", message.packet().frames());
		if (response.time() instanceof ResponseTime.Bounded bounded) {
			RecordJson.add(json, "worst", bounded.worst());
		} else {
			json.addProperty("noBound", JsonText.word(((ResponseTime.Unbounded) response.time()).reason()));
		}
		return json;
	}

	private static JsonObject leftOut(LeftOut message) {
		JsonObject json = new JsonObject();
		json.addProperty("pgn", message.pgn().number());
		json.addProperty("sender", message.sender());
		message.value().ifPresent(value -> json.addProperty("as", value.value()));
		json.addProperty("count", message.count());
		json.addProperty("reason", JsonText.word(message.reason()));
		return json;
	}
}
