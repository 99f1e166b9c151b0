# SPDX-License-Identifier: MIT
# What `cmake --install` puts in place for other projects: both libraries, the headers, and the two ways to find them.
include(GNUInstallDirs)
include(CMakePackageConfigHelpers)
set(package ${CMAKE_INSTALL_LIBDIR}/cmake/pipward)

install(TARGETS pipward_shared pipward_static EXPORT pipward COMPONENT library
  LIBRARY DESTINATION ${CMAKE_INSTALL_LIBDIR}
  ARCHIVE DESTINATION ${CMAKE_INSTALL_LIBDIR}
  INCLUDES DESTINATION ${CMAKE_INSTALL_INCLUDEDIR})
install(DIRECTORY ${CMAKE_CURRENT_SOURCE_DIR}/ DESTINATION ${CMAKE_INSTALL_INCLUDEDIR}/pipward COMPONENT library
  FILES_MATCHING PATTERN "*.h" PATTERN detail EXCLUDE)
install(EXPORT pipward NAMESPACE pipward:: FILE pipward-targets.cmake DESTINATION ${package} COMPONENT library)

configure_package_config_file(${CMAKE_CURRENT_LIST_DIR}/pipward-config.cmake.in pipward-config.cmake
  INSTALL_DESTINATION ${package})
# Before 1.0 a change of the second number may break a caller.
write_basic_package_version_file(pipward-config-version.cmake COMPATIBILITY SameMinorVersion)
install(FILES ${CMAKE_CURRENT_BINARY_DIR}/pipward-config.cmake
  ${CMAKE_CURRENT_BINARY_DIR}/pipward-config-version.cmake DESTINATION ${package} COMPONENT library)

# The tree may be installed anywhere: the file finds its way from where it lies.
file(RELATIVE_PATH prefix_from_pc "/${CMAKE_INSTALL_LIBDIR}/pkgconfig" "/")
configure_file(${CMAKE_CURRENT_LIST_DIR}/pipward.pc.in pipward.pc @ONLY)
install(FILES ${CMAKE_CURRENT_BINARY_DIR}/pipward.pc DESTINATION ${CMAKE_INSTALL_LIBDIR}/pkgconfig COMPONENT library)
