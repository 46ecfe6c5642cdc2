/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.Collection;
import java.util.Locale;
import java.util.function.Function;

/**
 * What all our JSON has in common: how it is laid out, lists, and the words for constants.
 */
public final class JsonText {

	private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

	private JsonText() {
	}

	/** A document as it is written to a file, with a line end at its end. */
	public static String of(JsonObject document) {
		return GSON.toJson(document) + "\n";
	}

	/** A list of what becomes of each item: JSON as it is, anything else as text. */
	public static <T> JsonArray array(Collection<T> items, Function<? super T, ?> json) {
		JsonArray array = new JsonArray();
		for (T item : items) {
			Object each = json.apply(item);
			if (each instanceof JsonElement element) {
				array.add(element);
			} else {
				array.add(each.toString());
			}
		}
		return array;
	}

	/** A list of texts. */
	public static JsonArray array(Collection<String> texts) {
		return array(texts, Function.identity());
	}

	/** A constant as documents write it: NOT_ENDED is not-ended. */
	public static String word(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}
}
