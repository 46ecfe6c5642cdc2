/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.Figures;
import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.traffic.BusFigures;
import hullwright.network.Network;
import hullwright.report.WrappedText;
import hullwright.rules.Finding;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The figures of boats for a person at a terminal: what matters most of each network first, then the tables behind it, then what
 * was assumed.
 */
public final class FiguresText {

	/** As many lines of a long table are shown, unless all are wanted. */
	private static final int SOME = 8;

	private static final String INDENT = "  ";

	private static final String CAUTION = "These figures are estimates for design. Wires, contacts and devices differ: measure after installation. "
			+ "Local codes, the makers' instructions and a licensed electrician decide. Batteries deliver thousands of amperes into a short "
			+ "circuit: isolate them before you work on wiring.";

	private final int most;
	private final StringBuilder text = new StringBuilder();

	private FiguresText(boolean all) {
		most = all ? Integer.MAX_VALUE : SOME;
	}

	/**
	 * Writes the figures of projects.
	 *
	 * @param all whether every line of every table is wanted
	 */
	public static String of(List<ProjectFigures> projects, boolean all) {
		String pages = projects.stream().map(project -> new FiguresText(all).project(project, projects.size() > 1)).collect(Collectors.joining("\n"));
		return projects.stream().allMatch(project -> project.boats().isEmpty()) ? pages : pages + caution();
	}

	private static String caution() {
		return WrappedText.lines("", "", CAUTION, WrappedText.PAGE).stream().map(line -> line + "\n").collect(Collectors.joining());
	}

	private String project(ProjectFigures project, boolean named) {
		if (named) {
			line("Project " + project.name());
			line("");
		}
		for (Finding problem : project.problems()) {
			line(problem.severity().word() + "  " + project.place(problem.origin()));
			sentence(problem.message());
			line("");
		}
		project.boats().forEach(boat -> boat(boat, project));
		if (project.boats().isEmpty() && project.gaps().isEmpty()) {
			line("No series is declared here, so nothing was computed.");
		}
		project.gaps().forEach(gap -> line("Not computed: " + gap + "."));
		if (!project.boats().isEmpty() && !project.gaps().isEmpty()) {
			line("");
		}
		return text.toString();
	}

	private void boat(Figures figures, ProjectFigures project) {
		BoatElectrics boat = figures.electrics();
		Wording wording = new Wording(boat.boat().series());
		String revision = boat.boat().revision().isEmpty() ? "" : " revision " + boat.boat().revision();
		line(boat.boat().series() + revision + ", " + boat.boat().selection()
				+ (project.plainest() ? " (the boat with the fewest options; --with and --hull choose another)" : ""));
		new StateText(boat.states()).sentence().ifPresent(each -> WrappedText.lines("", INDENT, each, WrappedText.PAGE).forEach(this::line));
		line("");
		List<ProblemText.Told> problems = new ProblemText(figures, wording).all();
		for (ProblemText.Told problem : problems) {
			line("problem  " + project.place(problem.origin()));
			sentence(problem.message() + ".");
		}
		if (!problems.isEmpty()) {
			line("");
		}
		if (boat.boat().networks().isEmpty()) {
			line("No network is declared.");
			line("");
		}
		for (int i = 0; i < boat.boat().networks().size(); i++) {
			network(boat, boat.boat().networks().get(i), wording);
			traffic(figures.buses().get(i), wording);
		}
		serialLines(figures, wording);
		DataText data = new DataText(figures.data(), wording);
		noted("What devices need", data.wants(), data.wantNotes());
		paragraph("Data on board", data.lines());
		table("Data instances, and who tells them", data.instances());
		CurrentTables currents = new CurrentTables(boat, wording);
		FuseTable fuses = new FuseTable(boat, wording);
		noted("Fuses and breakers, at guaranteed loads and starting; short circuits right behind them", fuses.table(), fuses.notes());
		table("Banks and converters, at guaranteed loads", currents.sources());
		table("Leads by the feed-wire formula of the marine trade (3 %: electronics and what safety hangs on)", new DropTables(boat, wording).leads());
		LossTable losses = new LossTable(boat, wording);
		table("What is lost when one thing fails, with all supplies on", losses.table());
		paragraph("Assumed where the texts are silent", new AssumptionText(figures, wording).lines());
	}

	private void network(BoatElectrics boat, Network network, Wording wording) {
		line("Network " + wording.name(network.name()));
		new NetworkSummary(boat, network, wording).lines().forEach(this::sentence);
		line("");
		DeviceTable devices = new DeviceTable(boat, network, wording);
		table("Voltages at the devices: the worst of all power states", devices.table());
		if (!devices.unfed().isEmpty()) {
			line(INDENT + "Fed in no power state: " + wording.some(devices.unfed(), network.name()) + ".");
			line("");
		}
		CurrentTables currents = new CurrentTables(boat, wording);
		table("Supplies, at guaranteed loads", currents.entries(network));
		table("Cables and contacts against their ratings, at guaranteed loads", currents.conductors(network));
		DropTables drops = new DropTables(boat, wording);
		table("The simple formula of the trade, all load at the far end, without drops, contacts and lead", drops.simple(network));
		if (!drops.simple(network).isEmpty()) {
			drops.beside(network).ifPresent(each -> paragraph("", List.of(each)));
		}
		paragraph("Where supplies enter", drops.taps(network));
		FaultTable faults = new FaultTable(boat, network, wording);
		if (!faults.isEmpty()) {
			table(faults.summary(), faults.table());
			paragraph("", faults.notes(most));
		}
		boat.lines().stream().filter(each -> each.network().equals(network.name())).findFirst().ifPresent(each -> line(each, wording));
	}

	private void line(LineFigures figures, Wording wording) {
		paragraph("Signal line", new LineText(figures, wording).lines());
	}

	private void traffic(BusFigures bus, Wording wording) {
		TrafficText traffic = new TrafficText(bus, wording);
		paragraph("Traffic", traffic.lines());
		table("How long messages take at most, whatever the addresses", traffic.table());
	}

	private void serialLines(Figures figures, Wording wording) {
		SerialText serial = new SerialText(figures.serialLines(), wording);
		noted("Serial lines, in characters a second", serial.loads(), serial.loadNotes());
		noted("Ends of serial lines", serial.ends(), serial.endNotes());
		RelayText relays = new RelayText(figures.serialRelays(), wording);
		noted("Devices that pass sentences on, in characters a second", relays.table(), relays.notes());
	}

	/** A table, and what it does not show. */
	private void noted(String title, TextTable table, List<String> notes) {
		table(title, table);
		if (!table.isEmpty()) {
			paragraph("", notes);
		}
	}

	private void paragraph(String title, List<String> lines) {
		if (lines.isEmpty()) {
			return;
		}
		if (title.isEmpty()) {
			// goes with the table above it
			text.setLength(text.length() - 1);
		} else {
			line(title);
		}
		lines.forEach(this::sentence);
		line("");
	}

	/** A table under its title, with a note if only the first lines of more are shown. */
	private void table(String title, TextTable table) {
		if (table.isEmpty()) {
			return;
		}
		WrappedText.lines("", INDENT, title, WrappedText.PAGE).forEach(this::line);
		table.lines(INDENT, most, WrappedText.PAGE).forEach(this::line);
		table.rest(most).ifPresent(rest -> line(INDENT + rest));
		line("");
	}

	private void sentence(String sentence) {
		WrappedText.lines(INDENT, INDENT + INDENT, sentence, WrappedText.PAGE).forEach(this::line);
	}

	private void line(String line) {
		text.append(line).append('\n');
	}
}
