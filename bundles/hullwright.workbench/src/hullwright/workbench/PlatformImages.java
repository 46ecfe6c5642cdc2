/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import java.net.URL;
import java.util.Map;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.ide.IDE;
import org.osgi.framework.Bundle;

/**
 * The images which the platform's own views expect an application to declare. Without them they show red squares.
 */
final class PlatformImages {

	private static final String ICONS = "icons/full/";

	/** Names that the views look up, and where the platform's bundle keeps the pictures. */
	private static final Map<String, String> SHARED = Map.ofEntries(
			Map.entry(IDE.SharedImages.IMG_OBJ_PROJECT, "obj16/prj_obj"),
			Map.entry(IDE.SharedImages.IMG_OBJ_PROJECT_CLOSED, "obj16/cprj_obj"),
			Map.entry(IDE.SharedImages.IMG_OPEN_MARKER, "elcl16/gotoobj_tsk"),
			Map.entry(IDE.SharedImages.IMG_OBJS_TASK_TSK, "obj16/taskmrk_tsk"),
			Map.entry(IDE.SharedImages.IMG_OBJS_BKMRK_TSK, "obj16/bkmrk_tsk"),
			Map.entry("IMG_OBJS_COMPLETE_TSK", "obj16/complete_tsk"),
			Map.entry("IMG_OBJS_INCOMPLETE_TSK", "obj16/incomplete_tsk"));

	private static final Map<String, String> OWN = Map.ofEntries(
			Map.entry("IMG_ETOOL_PROBLEM_CATEGORY", "etool16/problem_category"),
			Map.entry("IMG_ETOOL_PROBLEMS_VIEW", "eview16/problems_view"),
			Map.entry("IMG_ETOOL_PROBLEMS_VIEW_ERROR", "eview16/problems_view_error"),
			Map.entry("IMG_ETOOL_PROBLEMS_VIEW_WARNING", "eview16/problems_view_warning"),
			Map.entry("IMG_ETOOL_PROBLEMS_VIEW_INFO", "eview16/problems_view_info"),
			Map.entry("IMG_ETOOL_NEXT_NAV", "etool16/next_nav"),
			Map.entry("IMG_ETOOL_PREVIOUS_NAV", "etool16/prev_nav"),
			Map.entry("IMG_LCL_FLAT_LAYOUT", "elcl16/flatLayout"),
			Map.entry("IMG_LCL_HIERARCHICAL_LAYOUT", "elcl16/hierarchicalLayout"),
			Map.entry("IMG_OBJS_ERROR_PATH", "obj16/error_tsk"),
			Map.entry("IMG_OBJS_WARNING_PATH", "obj16/warn_tsk"),
			Map.entry("IMG_OBJS_INFO_PATH", "obj16/info_tsk"),
			Map.entry("IMG_DLCL_QUICK_FIX_DISABLED", "dlcl16/smartmode_co"),
			Map.entry("IMG_ELCL_QUICK_FIX_ENABLED", "elcl16/smartmode_co"),
			Map.entry("IMG_OBJS_FIXABLE_WARNING", "obj16/quickfix_warning_obj"),
			Map.entry("IMG_OBJS_FIXABLE_ERROR", "obj16/quickfix_error_obj"),
			Map.entry("IMG_OBJS_FIXABLE_INFO", "obj16/quickfix_info_obj"),
			Map.entry("IMG_WIZBAN_NEWPRJ_WIZ", "wizban/newprj_wiz"),
			Map.entry("IMG_WIZBAN_NEWFOLDER_WIZ", "wizban/newfolder_wiz"),
			Map.entry("IMG_WIZBAN_NEWFILE_WIZ", "wizban/newfile_wiz"),
			Map.entry("IMG_WIZBAN_IMPORTDIR_WIZ", "wizban/importdir_wiz"),
			Map.entry("IMG_WIZBAN_IMPORTZIP_WIZ", "wizban/importzip_wiz"),
			Map.entry("IMG_WIZBAN_EXPORTDIR_WIZ", "wizban/exportdir_wiz"),
			Map.entry("IMG_WIZBAN_EXPORTZIP_WIZ", "wizban/exportzip_wiz"),
			Map.entry("IMG_DLGBAN_SAVEAS_DLG", "wizban/saveas_wiz"),
			Map.entry("IMG_DLGBAN_QUICKFIX_DLG", "wizban/quick_fix"));

	private PlatformImages() {
	}

	static void declare(IWorkbenchConfigurer configurer) {
		Bundle bundle = Platform.getBundle("org.eclipse.ui.ide");
		SHARED.forEach((name, path) -> configurer.declareImage(name, find(bundle, path), true));
		OWN.forEach((name, path) -> configurer.declareImage(name, find(bundle, path), false));
	}

	private static ImageDescriptor find(Bundle bundle, String path) {
		URL picture = FileLocator.find(bundle, new Path(ICONS + path + ".svg"), null);
		if (picture == null) {
			picture = FileLocator.find(bundle, new Path(ICONS + path + ".png"), null);
		}
		return picture == null ? ImageDescriptor.getMissingImageDescriptor() : ImageDescriptor.createFromURL(picture);
	}
}
