/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarInputStream;
import java.util.jar.Manifest;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Reads what a jar says of itself, without running anything of it.
 *
 * @param manifest its manifest, if it has one
 * @param entries the bytes of its files, by their path in it
 */
record PluginJar(Optional<Manifest> manifest, Map<String, byte[]> entries) {

	private static final String POINT = "hullwright.rules.rule";

	/** Unpacked, a jar may be this large, in bytes: rules are small, and a jar made to burst is not. */
	private static final long LARGEST = 50_000_000;

	static PluginJar read(byte[] bytes) throws IOException {
		Map<String, byte[]> entries = new HashMap<>();
		long size = 0;
		try (JarInputStream jar = new JarInputStream(new ByteArrayInputStream(bytes), false)) {
			Optional<Manifest> manifest = Optional.ofNullable(jar.getManifest());
			for (JarEntry entry = jar.getNextJarEntry(); entry != null; entry = jar.getNextJarEntry()) {
				byte[] content = jar.readNBytes((int) (LARGEST - size + 1));
				size += content.length;
				if (size > LARGEST) {
					throw new IOException("it is larger than " + LARGEST / 1_000_000 + " MB when it is unpacked");
				}
				entries.put(entry.getName(), content);
			}
			return new PluginJar(manifest, entries);
		}
	}

	/** The plugin that a jar is, refused if it is none. */
	static HousePlugin plugin(String file, byte[] bytes) {
		String name = file.substring(file.lastIndexOf('/') + 1);
		HousePlugin unread = new HousePlugin(file, name, "", sha256(bytes), List.of(), Optional.empty(), bytes);
		try {
			PluginJar jar = read(bytes);
			if (jar.manifest.isEmpty() && jar.entries.isEmpty()) {
				return unread.refused("it is no jar, or an empty one");
			}
			Optional<Attributes> attributes = jar.manifest.map(Manifest::getMainAttributes);
			String symbolic = attributes.map(each -> each.getValue("Bundle-SymbolicName")).orElse("");
			HousePlugin named = new HousePlugin(file, symbolic == null || symbolic.isBlank() ? name : symbolic.split(";")[0].strip(),
					attributes.map(each -> each.getValue("Bundle-Version")).map(String::strip).orElse(""), unread.sha256(), List.of(), Optional.empty(), bytes);
			if (symbolic == null || symbolic.isBlank()) {
				return named.refused("it is no plugin: its manifest has no Bundle-SymbolicName");
			} else if (!jar.entries.containsKey("plugin.xml")) {
				return named.refused("it is no plugin: it has no plugin.xml");
			}
			List<String> rules = rules(jar.entries.get("plugin.xml"));
			return rules.isEmpty() ? named.refused("it contributes no rule at " + POINT)
					: new HousePlugin(file, named.name(), named.version(), unread.sha256(), rules, Optional.empty(), bytes);
		} catch (IOException | SecurityException | IllegalArgumentException e) {
			return unread.refused("it cannot be read: " + e.getMessage());
		} catch (SAXException e) {
			return unread.refused("its plugin.xml is no XML: " + e.getMessage());
		}
	}

	private static List<String> rules(byte[] descriptor) throws IOException, SAXException {
		Document document = parser().parse(new ByteArrayInputStream(descriptor));
		List<String> rules = new ArrayList<>();
		NodeList extensions = document.getElementsByTagName("extension");
		for (int i = 0; i < extensions.getLength(); i++) {
			Element extension = (Element) extensions.item(i);
			NodeList found = extension.getElementsByTagName("rule");
			for (int k = 0; k < found.getLength() && extension.getAttribute("point").equals(POINT); k++) {
				rules.add(((Element) found.item(k)).getAttribute("class"));
			}
		}
		return rules;
	}

	/** A parser that opens nothing and follows nothing. */
	private static DocumentBuilder parser() {
		try {
			DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
			factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
			factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
			DocumentBuilder parser = factory.newDocumentBuilder();
			parser.setErrorHandler(new ErrorHandler() {
				@Override
				public void warning(SAXParseException exception) {
					// not worth a word
				}

				@Override
				public void error(SAXParseException exception) throws SAXException {
					throw exception;
				}

				@Override
				public void fatalError(SAXParseException exception) throws SAXException {
					throw exception;
				}
			});
			return parser;
		} catch (ParserConfigurationException e) {
			throw new IllegalStateException("every Java has such a parser", e);
		}
	}

	static String sha256(byte[] bytes) {
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
	}
}
