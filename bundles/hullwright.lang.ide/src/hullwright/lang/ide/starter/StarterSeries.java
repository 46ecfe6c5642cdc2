/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.starter;

import java.util.ArrayList;
import java.util.List;

/**
 * A series to begin with: one network with one block, which works as it is.
 *
 * @param name its name
 * @param title what people call it, or empty
 * @param revision the revision of its text, or empty
 * @param voltage the voltage on board
 * @param devices what hangs on the block, in the order of its ports; at most four, further ones are left out
 */
public record StarterSeries(String name, String title, String revision, Voltage voltage, List<Device> devices) {

	private static final int PORTS = 4;

	public StarterSeries {
		devices = List.copyOf(devices);
	}

	/** What the banks on board have. The network has 12 V either way. */
	public enum Voltage {
		/** One battery of 12 V. */
		V12("12 V"),
		/** Banks of 24 V, with a converter for the network. */
		V24("24 V, with a converter to 12 V for the network");

		private final String label;

		Voltage(String label) {
			this.label = label;
		}

		/** For people. */
		public String label() {
			return label;
		}
	}

	/** Devices that most boats have. */
	public enum Device {
		/** An instrument display at the helm. */
		DISPLAY("Instrument display at the helm", "via 1 m of light to display : instrumentDisplay at helm { label \"Display\" }"),
		/** A depth transducer under the sole. */
		DEPTH("Depth transducer under the sole", "to depth : depthTransducer at bilge { label \"Depth\" }"),
		/** A position receiver on the roof. */
		POSITION("Position receiver on the roof", "to position : positionReceiver at roof { label \"Position\" }"),
		/** A heading sensor in a locker. */
		HEADING("Heading sensor in a locker", "via 1 m of light to heading : headingSensor at locker { label \"Heading\" }");

		private final String label;
		private final String drop;

		Device(String label, String drop) {
			this.label = label;
			this.drop = drop;
		}

		/** For people. */
		public String label() {
			return label;
		}
	}

	/** The text of its file. */
	public String text() {
		return """
				import "standard:parts"

				series %s%s%s {
					places {
						helm "Helm"
						bilge "Under the sole" wet
						roof "Cabin roof" outside
						locker "Locker far from iron and current" near compass
					}

					switch electronics "Electronics breaker"

				%s
					network instruments "Instrument network" of kind instrument bus {
						// end to end, in the order in which the parts are joined
						backbone of light {
							terminator left : endFemale at helm
							tee block : block4 at helm
							// where the power comes in; the shield meets the boat's negative here and nowhere else
							tap feed : midTap at helm from network earths shield
							terminator right : endMale at helm
						}

				%s	}

					hull 1
				}
				""".formatted(name, Names.title(title), revision.isBlank() ? "" : " revision " + Names.quoted(revision), supply(), drops());
	}

	private String supply() {
		String bank = voltage == Voltage.V12 ? "bank house \"House bank\" { 12 V, lowest 11.0 V, highest 14.6 V }\n"
				: """
						bank house "House bank" { 24 V, lowest 22.0 V, highest 29.2 V }
							converter forward "24 V to 12 V" { from house; 13.8 V; isolated; at most 8 A; takes 18 V .. 32 V }
						""";
		return "\t" + bank + """

					supply network "Network breaker" {
						from %s
						switch electronics
						fuse 3 A
						lead 2 m each way of 1.5 mm2
					}
				""".formatted(voltage == Voltage.V12 ? "house" : "forward");
	}

	private String drops() {
		List<String> lines = new ArrayList<>();
		lines.add("// each device hangs on a port of its own");
		for (int port = 1; port <= Math.min(PORTS, devices.size()); port++) {
			lines.add("drop block." + port + " " + devices.get(port - 1).drop);
		}
		StringBuilder text = new StringBuilder();
		lines.forEach(line -> text.append("\t\t").append(line).append('\n'));
		return text.toString();
	}
}
