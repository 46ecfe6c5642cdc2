/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import hullwright.rules.Severity;

/**
 * The smallest pieces of SARIF.
 */
final class SarifText {

	private SarifText() {
	}

	/** A message object. A brace would begin a placeholder there and is doubled (SARIF 2.1.0, section 3.11.5). */
	static JsonObject message(String text) {
		return property("text", text.replace("{", "{{").replace("}", "}}"));
	}

	/** A text that describes a rule. Nothing is put into it, so that it stays as it is. */
	static JsonObject description(String text) {
		return property("text", text);
	}

	/** An object with one property. */
	static JsonObject property(String name, String value) {
		JsonObject json = new JsonObject();
		json.addProperty(name, value);
		return json;
	}

	/** A list of one object. */
	static JsonArray list(JsonObject one) {
		JsonArray list = new JsonArray();
		list.add(one);
		return list;
	}

	/** The level of a severity; advice is a note. */
	static String level(Severity severity) {
		return switch (severity) {
		case ERROR -> "error";
		case WARNING -> "warning";
		case ADVICE -> "note";
		};
	}
}
