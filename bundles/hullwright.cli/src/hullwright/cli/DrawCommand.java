/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.analysis.Figures;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.WantedBoats;
import hullwright.documents.drawing.NetworkDrawing;
import hullwright.documents.scene.Palette;
import hullwright.documents.scene.PdfWriter;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.SvgWriter;
import hullwright.network.Boat;
import hullwright.rules.Finding;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * {@code hullwright draw}: the networks of one boat, laid over the boat.
 */
@Command(name = "draw", sortOptions = false,
		description = "Draws one boat: its networks laid over the boat, with what is left of each limit and with the findings, as SVG or PDF. "
				+ "It is the drawing that the workbench shows.",
		footer = { "", "Exit status: 0 drawn, whatever was found; 2 not everything could be." })
final class DrawCommand implements Callable<Integer> {

	private final Terminal terminal;

	@Mixin
	private WantedProjects projects;

	@Mixin
	private HelpOption help;

	@ArgGroup
	private OneBoat oneBoat;

	@Option(names = "--output", paramLabel = "FILE", description = "Write the drawing to this file, whole or not at all, as PDF if it is named *.pdf and else as SVG; "
			+ "without this, as SVG to standard output.")
	private Path output;

	@Option(names = "--dark", description = "Draw on a dark ground.")
	private boolean dark;

	DrawCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	/** A boat and what was found on it. */
	private record Drawn(Boat boat, List<Finding> findings) {
	}

	@Override
	public Integer call() {
		if (output != null) {
			WholeFile.refuseHopeless(output);
		}
		WantedBoats wanted = oneBoat == null ? new WantedBoats.Plainest() : oneBoat.wanted();
		Checker checker = Checker.create();
		List<Drawn> boats = new ArrayList<>();
		List<String> gaps = new ArrayList<>();
		for (Project project : projects.all()) {
			CheckRequest request = new CheckRequest(project.snapshot(), project.focus(), wanted, LocalDate.now());
			BoatsRead read = checker.boats(request);
			gaps.addAll(read.gaps());
			for (Finding problem : read.problems()) {
				gaps.add(project.pathOf(problem.origin().file()) + ":" + problem.origin().line() + ":" + problem.origin().column() + " " + problem.message());
			}
			CheckReport report = checker.check(request);
			read.boats().forEach(boat -> boats.add(new Drawn(boat, findings(report, boat))));
		}
		gaps.forEach(gap -> terminal.err().println("hullwright: " + gap));
		write(one(boats));
		return gaps.isEmpty() ? ExitStatus.CLEAN : ExitStatus.INCOMPLETE;
	}

	private static List<Finding> findings(CheckReport report, Boat boat) {
		return report.findings().stream().filter(each -> each.occurrence().series().equals(boat.series())).map(ReportedFinding::finding).toList();
	}

	private static Drawn one(List<Drawn> boats) {
		if (boats.isEmpty()) {
			throw new Refusal("there is no boat to draw");
		}
		if (boats.size() > 1) {
			throw new Refusal("there are " + boats.size() + " series (" + boats.stream().map(each -> each.boat().series()).collect(Collectors.joining(", "))
					+ "); name the file of one");
		}
		return boats.get(0);
	}

	private void write(Drawn drawn) {
		Scene scene = NetworkDrawing.of(new Figures(drawn.boat()), drawn.findings());
		Palette palette = dark ? Palette.DARK : Palette.LIGHT;
		if (output == null) {
			terminal.out().print(SvgWriter.write(scene, palette));
		} else if (output.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
			WholeFile.writeOrRefuse(output, PdfWriter.write(scene, palette));
		} else {
			WholeFile.writeOrRefuse(output, SvgWriter.write(scene, palette));
		}
	}
}
