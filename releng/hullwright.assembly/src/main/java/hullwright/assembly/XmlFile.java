/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Reads XML without fetching anything that it names.
 */
final class XmlFile {

	private XmlFile() {
	}

	static Element read(Path file) throws IOException {
		try (InputStream content = Files.newInputStream(file)) {
			return read(content, file.toString());
		}
	}

	static Element read(InputStream content, String name) throws IOException {
		try {
			DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
			factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
			return factory.newDocumentBuilder().parse(content).getDocumentElement();
		} catch (SAXException | ParserConfigurationException e) {
			throw new IOException(name + " is not XML: " + e.getMessage(), e);
		}
	}

	/** All elements with a name inside another one, at any depth. */
	static List<Element> all(Element parent, String name) {
		NodeList found = parent.getElementsByTagName(name);
		List<Element> elements = new ArrayList<>();
		for (int i = 0; i < found.getLength(); i++) {
			elements.add((Element) found.item(i));
		}
		return elements;
	}

	/** The element with a name directly below another one. */
	static Optional<Element> child(Element parent, String name) {
		for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
			if (node instanceof Element element && element.getTagName().equals(name)) {
				return Optional.of(element);
			}
		}
		return Optional.empty();
	}

	/** The text of the element with a name directly below another one. */
	static Optional<String> text(Element parent, String name) {
		return child(parent, name).map(element -> element.getTextContent().strip());
	}

	/** The artifact whose coordinates stand in three elements directly below this one, if all three do. */
	static Optional<Artifact> artifact(Element parent) {
		Optional<String> group = text(parent, "groupId");
		Optional<String> name = text(parent, "artifactId");
		Optional<String> version = text(parent, "version");
		return group.isPresent() && name.isPresent() && version.isPresent()
				? Optional.of(new Artifact(group.get(), name.get(), version.get()))
				: Optional.empty();
	}
}
