/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import com.google.gson.JsonObject;
import hullwright.analysis.Figures;
import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.network.Origin;
import hullwright.report.JsonText;
import hullwright.rules.Finding;
import java.util.List;

/**
 * The figures of boats for programs to read, after the JSON schema beside this class ({@code figures-1.schema.json}). Quantities are
 * numbers of SI units, with the unit in the key: {@code "voltage_V": 11.42}.
 */
public final class FiguresJson {

	/** The version of the format; it changes when a reader of the old one would stumble. */
	public static final int VERSION = 1;

	private FiguresJson() {
	}

	/** Writes the figures of projects as one document, with a line end at its end. */
	public static String of(List<ProjectFigures> projects) {
		JsonObject document = new JsonObject();
		document.addProperty("format", "hullwright-figures");
		document.addProperty("version", VERSION);
		document.addProperty("complete", projects.stream().allMatch(ProjectFigures::isComplete));
		document.add("projects", JsonText.array(projects, FiguresJson::project));
		return JsonText.of(document);
	}

	private static JsonObject project(ProjectFigures project) {
		JsonObject json = new JsonObject();
		json.addProperty("project", project.name());
		json.addProperty("complete", project.isComplete());
		json.add("gaps", JsonText.array(project.gaps()));
		json.add("problems", JsonText.array(project.problems(), FiguresJson::problem));
		json.add("boats", JsonText.array(project.boats(), FiguresJson::boat));
		return json;
	}

	private static JsonObject problem(Finding finding) {
		JsonObject json = problem(finding.message(), finding.origin());
		json.addProperty("severity", finding.severity().word());
		return json;
	}

	private static JsonObject problem(String message, Origin origin) {
		JsonObject json = new JsonObject();
		json.addProperty("file", origin.file());
		json.addProperty("line", origin.line());
		json.addProperty("column", origin.column());
		json.addProperty("message", message);
		return json;
	}

	private static JsonObject boat(Figures figures) {
		BoatElectrics boat = figures.electrics();
		JsonObject json = new JsonObject();
		json.addProperty("series", boat.boat().series());
		json.addProperty("revision", boat.boat().revision());
		json.add("options", JsonText.array(boat.boat().selection().options()));
		json.addProperty("hull", boat.boat().selection().hull().orElse(""));
		json.add("problems", JsonText.array(new ProblemText(figures, new Wording(boat.boat().series())).all(), each -> problem(each.message(), each.origin())));
		json.add("states", JsonText.array(boat.states(), FiguresJson::state));
		RecordJson.add(json, "simpleDrops", boat.simpleDrops());
		RecordJson.add(json, "leadSizings", boat.leadSizings());
		RecordJson.add(json, "losses", boat.losses());
		RecordJson.add(json, "lines", boat.lines());
		json.add("buses", JsonText.array(figures.buses(), TrafficJson::of));
		json.add("data", DataJson.of(figures.data()));
		json.add("serialLines", JsonText.array(figures.serialLines(), SerialJson::of));
		RecordJson.add(json, "serialRelays", figures.serialRelays());
		return json;
	}

	private static JsonObject state(StateElectrics state) {
		JsonObject json = new JsonObject();
		json.addProperty("state", state.state().map(each -> each.name()).orElse(""));
		RecordJson.add(json, "nominal", state.nominal());
		RecordJson.add(json, "lowest", state.lowest());
		RecordJson.add(json, "highest", state.highest());
		RecordJson.add(json, "starting", state.starting());
		RecordJson.add(json, "taps", state.taps());
		RecordJson.add(json, "shortCircuits", state.shortCircuits());
		RecordJson.add(json, "breaking", state.breaking());
		return json;
	}
}
