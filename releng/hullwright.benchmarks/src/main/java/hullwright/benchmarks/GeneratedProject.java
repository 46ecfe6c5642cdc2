/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A project of any size: series of one network of fifty devices, each in a file of its own, without options.
 */
final class GeneratedProject {

	/** How many devices a network has. */
	static final int DEVICES_PER_NETWORK = 50;

	private static final int PORTS_PER_BLOCK = 4;

	private GeneratedProject() {
	}

	/** The texts of a project by path. */
	static Map<String, String> of(int devices) {
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put("yard.hull", "profile Yard \"Standard limits\" from standard {\n}\n");
		for (int network = 0; network < devices / DEVICES_PER_NETWORK; network++) {
			texts.put(pathOf(network), series(network, 2));
		}
		return texts;
	}

	/** The file of one of the series. */
	static String pathOf(int network) {
		return "series" + network + ".hull";
	}

	/**
	 * The text of one series.
	 *
	 * @param dropMetres the length of each drop
	 */
	static String series(int network, int dropMetres) {
		StringBuilder text = new StringBuilder("import \"standard:parts\"\n\n");
		text.append("series Generated").append(network).append(" \"Generated, no such boat exists\" revision \"A\" {\n");
		text.append("\tplaces {\n\t\thelm \"Helm\"\n\t}\n");
		text.append("\tsupply battery \"House battery\" {\n\t\t12 V, lowest 11.0 V, highest 14.6 V\n\t\tfuse 3 A\n"
				+ "\t\tlead 2 m each way of 1.5 mm2\n\t}\n");
		text.append("\tnetwork instruments of kind instrument bus {\n\t\tbackbone of light {\n");
		text.append("\t\t\tterminator left : endFemale at helm\n\t\t\ttap feed : midTap at helm from battery earths shield\n");
		int blocks = (DEVICES_PER_NETWORK + PORTS_PER_BLOCK - 1) / PORTS_PER_BLOCK;
		for (int block = 0; block < blocks; block++) {
			text.append("\t\t\tcable 2 m\n\t\t\ttee block").append(block).append(" : block4 at helm\n");
		}
		text.append("\t\t\tterminator right : endMale at helm\n\t\t}\n");
		for (int device = 0; device < DEVICES_PER_NETWORK; device++) {
			text.append("\t\tdrop block").append(device / PORTS_PER_BLOCK).append('.').append(device % PORTS_PER_BLOCK + 1)
					.append(" via ").append(dropMetres).append(" m of light to device").append(device)
					.append(" : rudderSensor at helm\n");
		}
		return text.append("\t}\n\thull 1\n}\n").toString();
	}
}
