/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import hullwright.analysis.data.Carrier;
import hullwright.analysis.data.CarrierTraffic;
import hullwright.analysis.data.DataFlow;
import hullwright.analysis.data.DataInstances;
import hullwright.analysis.data.DataPath;
import hullwright.analysis.data.DataSource;
import hullwright.analysis.data.DoubledData;
import hullwright.analysis.data.EchoLoop;
import hullwright.analysis.data.ReceivedData;
import hullwright.analysis.data.SeveralSources;
import hullwright.analysis.data.ShownData;
import hullwright.analysis.data.ToldMessage;
import hullwright.analysis.data.WantedData;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Timing;
import hullwright.report.JsonText;
import java.util.Collection;

/**
 * Who tells what to whom as JSON. Messages are written as texts write them: {@code 127250 as magnetic}.
 */
final class DataJson {

	private DataJson() {
	}

	static JsonObject of(DataFlow data) {
		JsonObject json = new JsonObject();
		json.add("carriers", JsonText.array(data.carriers(), DataJson::carrier));
		json.add("wants", JsonText.array(data.wants(), DataJson::wanted));
		json.add("shows", JsonText.array(data.shows(), DataJson::shown));
		json.add("severalSources", JsonText.array(data.shared(), DataJson::several));
		json.add("doubled", JsonText.array(data.doubled(), DataJson::doubled));
		json.add("loops", JsonText.array(data.loops(), DataJson::loop));
		json.add("unused", JsonText.array(data.unused(), DataJson::source));
		json.add("instances", JsonText.array(data.instances(), DataJson::instances));
		return json;
	}

	private static JsonObject carrier(CarrierTraffic traffic) {
		JsonObject json = carrier(traffic.carrier());
		json.add("messages", JsonText.array(traffic.messages(), DataJson::told));
		return json;
	}

	private static JsonObject carrier(Carrier carrier) {
		JsonObject json = new JsonObject();
		json.addProperty("kind", JsonText.word(carrier.kind()));
		json.addProperty("name", carrier.name());
		return json;
	}

	private static JsonObject told(ToldMessage told) {
		JsonObject json = new JsonObject();
		json.addProperty("message", told.use().toString());
		told.instance().ifPresent(number -> json.addProperty("instance", number));
		json.addProperty("teller", told.teller());
		json.addProperty("how", JsonText.word(told.how()));
		timing(json, told.timing());
		json.add("heard", JsonText.array(told.heard(), heard -> {
			JsonObject each = carrier(heard.carrier());
			each.addProperty("teller", heard.teller());
			each.addProperty("message", heard.use().toString());
			return each;
		}));
		json.add("sources", JsonText.array(told.sources(), DataJson::source));
		return json;
	}

	private static void timing(JsonObject json, Timing timing) {
		RecordJson.add(json, "every", timing.every());
		json.addProperty("onEvent", timing.onEvent());
		RecordJson.add(json, "apart", timing.apart());
	}

	private static JsonObject source(DataSource source) {
		JsonObject json = new JsonObject();
		json.addProperty("device", source.device());
		json.addProperty("message", source.use().toString());
		source.instance().ifPresent(number -> json.addProperty("instance", number));
		return json;
	}

	private static JsonObject wanted(WantedData wanted) {
		JsonObject json = new JsonObject();
		json.addProperty("device", wanted.device());
		json.add("anyOf", messages(wanted.wanting().uses()));
		RecordJson.add(json, "atLeastEvery", wanted.wanting().atLeastEvery());
		json.addProperty("verdict", JsonText.word(wanted.verdict()));
		json.add("paths", JsonText.array(wanted.paths(), DataJson::path));
		json.add("received", JsonText.array(wanted.received(), DataJson::received));
		json.add("elsewhere", JsonText.array(wanted.elsewhere(), DataJson::source));
		return json;
	}

	private static JsonObject shown(ShownData shown) {
		JsonObject json = new JsonObject();
		json.addProperty("device", shown.device());
		json.add("received", JsonText.array(shown.received(), DataJson::received));
		json.add("missing", messages(shown.missing()));
		return json;
	}

	private static JsonObject received(ReceivedData received) {
		JsonObject json = new JsonObject();
		json.addProperty("message", received.use().toString());
		received.instance().ifPresent(number -> json.addProperty("instance", number));
		timing(json, received.timing());
		json.add("tellers", JsonText.array(received.tellers()));
		json.add("sources", JsonText.array(received.sources(), DataJson::source));
		json.addProperty("choice", JsonText.word(received.choice()));
		received.taken().ifPresent(teller -> json.addProperty("taken", teller));
		return json;
	}

	private static JsonObject instances(DataInstances data) {
		JsonObject json = new JsonObject();
		json.addProperty("pgn", data.pgn().number());
		json.add("instances", JsonText.array(data.instances(), one -> {
			JsonObject each = new JsonObject();
			each.addProperty("instance", one.instance());
			each.add("devices", JsonText.array(one.devices()));
			return each;
		}));
		return json;
	}

	private static JsonObject path(DataPath path) {
		JsonObject json = new JsonObject();
		json.add("source", source(path.source()));
		json.add("legs", JsonText.array(path.legs(), leg -> {
			JsonObject each = carrier(leg.carrier());
			each.addProperty("teller", leg.teller());
			each.addProperty("how", JsonText.word(leg.how()));
			each.addProperty("message", leg.use().toString());
			return each;
		}));
		timing(json, path.timing());
		RecordJson.add(json, "delay", path.delay());
		json.add("delayUnstated", JsonText.array(path.unstated()));
		return json;
	}

	private static JsonObject several(SeveralSources several) {
		JsonObject json = new JsonObject();
		json.addProperty("network", several.network());
		json.addProperty("message", several.use().toString());
		several.instance().ifPresent(number -> json.addProperty("instance", number));
		json.add("devices", JsonText.array(several.devices()));
		json.addProperty("sameKey", several.sameKey());
		return json;
	}

	private static JsonObject doubled(DoubledData doubled) {
		JsonObject json = carrier(doubled.carrier());
		json.add("tellers", JsonText.array(doubled.tellers()));
		json.add("messages", messages(doubled.messages()));
		return json;
	}

	private static JsonObject loop(EchoLoop loop) {
		JsonObject json = new JsonObject();
		json.add("devices", JsonText.array(loop.devices()));
		json.add("carriers", JsonText.array(loop.carriers(), DataJson::carrier));
		json.add("messages", messages(loop.messages()));
		return json;
	}

	private static JsonArray messages(Collection<MessageUse> uses) {
		return JsonText.array(uses.stream().map(MessageUse::toString).toList());
	}
}
