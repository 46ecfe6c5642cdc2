/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import hullwright.analysis.line.LineAssumption;
import hullwright.analysis.line.LineProblem;
import hullwright.analysis.power.Assumption;
import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.PowerProblem;
import hullwright.analysis.serial.CharacterRate;
import hullwright.analysis.serial.SerialAssumption;
import hullwright.analysis.serial.SerialProblem;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.SupplyEntry;
import hullwright.network.part.Cable;
import hullwright.network.part.Fuse;
import hullwright.quantity.BitRate;
import hullwright.quantity.Length;
import hullwright.quantity.Quantity;
import hullwright.quantity.Temperature;
import hullwright.report.JsonText;
import hullwright.report.JsonValue;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Writes the records of analyses as they are: a component under its name, a quantity with its unit, nothing for what is not there.
 * Parts of the boat itself are told by their names.
 */
final class RecordJson {

	private RecordJson() {
	}

	/** Adds a value under a name. */
	static void add(JsonObject json, String name, Object value) {
		if (value instanceof Optional<?> optional) {
			optional.ifPresent(each -> add(json, name, each));
		} else if (value instanceof Temperature temperature) {
			json.addProperty(name + "_degC", temperature.celsius());
		} else if (value instanceof CharacterRate rate) {
			json.addProperty(name + "_char_per_s", rate.perSecond());
		} else if (value instanceof Quantity) {
			JsonValue.add(json, name, value);
		} else {
			json.add(name, element(value));
		}
	}

	private static JsonElement element(Object value) {
		if (value instanceof Collection<?> collection) {
			return JsonText.array(collection, RecordJson::element);
		} else if (value instanceof Map<?, ?> map) {
			JsonArray array = new JsonArray();
			map.forEach((key, each) -> {
				JsonObject entry = new JsonObject();
				add(entry, "of", key);
				add(entry, "value", each);
				array.add(entry);
			});
			return array;
		} else if (value instanceof Number number) {
			return new JsonPrimitive(number);
		} else if (value instanceof Boolean flag) {
			return new JsonPrimitive(flag);
		} else if (value instanceof Enum<?> constant) {
			return new JsonPrimitive(JsonText.word(constant));
		} else if (value instanceof Length length) {
			return new JsonPrimitive(length.metres());
		} else if (value instanceof BitRate rate) {
			return new JsonPrimitive(rate.bitsPerSecond());
		} else if (value instanceof Cable cable) {
			return new JsonPrimitive(cable.identity().name());
		} else if (value instanceof Fuse fuse) {
			return fuse(fuse);
		} else if (value instanceof Span span) {
			return span(span);
		} else if (value instanceof SupplyEntry entry) {
			return entry(entry);
		} else if (value instanceof Conditions conditions) {
			return conditions(conditions);
		} else if (value instanceof Record any) {
			return of(any);
		}
		return new JsonPrimitive(value.toString());
	}

	private static JsonObject of(Record any) {
		JsonObject json = new JsonObject();
		if (any instanceof PowerProblem || any instanceof LineProblem || any instanceof SerialProblem) {
			json.addProperty("problem", any.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT));
		}
		if (any instanceof Assumption assumption) {
			add(json, "assumed", assumption.kind().assumed());
		} else if (any instanceof LineAssumption assumption) {
			add(json, "assumed", assumption.kind().assumed());
		} else if (any instanceof SerialAssumption assumption) {
			add(json, "assumed", assumption.kind().assumed());
		}
		for (RecordComponent component : any.getClass().getRecordComponents()) {
			try {
				add(json, component.getName() + (isListOf(Length.class, component) ? "_m" : isListOf(BitRate.class, component) ? "_bit_per_s" : ""),
						component.getAccessor().invoke(any));
			} catch (ReflectiveOperationException e) {
				throw new IllegalStateException("a result cannot be read: " + component, e);
			}
		}
		return json;
	}

	private static boolean isListOf(Class<?> items, RecordComponent component) {
		return component.getType() == List.class && component.getGenericType().getTypeName().endsWith("<" + items.getName() + ">");
	}

	private static JsonObject fuse(Fuse fuse) {
		JsonObject json = new JsonObject();
		add(json, "rating", fuse.rating());
		json.addProperty("kind", fuse.kind().map(kind -> kind.identity().name()).orElse(""));
		return json;
	}

	private static JsonObject span(Span span) {
		JsonObject json = new JsonObject();
		json.addProperty("element", span.element());
		span.other().ifPresent(other -> json.addProperty("other", other));
		json.addProperty("kind", span.medium() instanceof Medium.Contact ? "contact" : span.medium() instanceof Medium.Conductors ? "conductors" : "inside");
		return json;
	}

	private static JsonObject entry(SupplyEntry entry) {
		JsonObject json = new JsonObject();
		json.addProperty("supply", entry.supply());
		json.addProperty("part", entry.part());
		return json;
	}

	private static JsonObject conditions(Conditions conditions) {
		JsonObject json = new JsonObject();
		add(json, "banks", conditions.banks());
		add(json, "loads", conditions.loads());
		add(json, "conductors", conditions.conductors());
		return json;
	}
}
