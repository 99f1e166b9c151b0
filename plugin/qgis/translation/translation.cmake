# SPDX-License-Identifier: GPL-2.0-or-later
# Other languages than English: compiled into the plugin where Qt's tools for it are here.
set(languages de)
set(translation_tools /usr/lib/qt${QGIS_QT_MAJOR}/bin)
find_program(QT_RELEASE_TEXTS NAMES lrelease HINTS ${translation_tools})
find_program(QT_COLLECT_TEXTS NAMES lupdate HINTS ${translation_tools})

if(QT_RELEASE_TEXTS)
  set(folder ${CMAKE_CURRENT_BINARY_DIR}/translation)
  file(MAKE_DIRECTORY ${folder})
  set(entries "")
  foreach(language ${languages})
    set(texts ${CMAKE_CURRENT_SOURCE_DIR}/translation/pipward_${language}.ts)
    add_custom_command(OUTPUT ${folder}/pipward_${language}.qm
      COMMAND ${QT_RELEASE_TEXTS} -silent ${texts} -qm ${folder}/pipward_${language}.qm
      DEPENDS ${texts})
    string(APPEND entries "<file>pipward_${language}.qm</file>")
    set_property(SOURCE ${folder}/translation.qrc APPEND PROPERTY OBJECT_DEPENDS ${folder}/pipward_${language}.qm)
    list(APPEND released ${folder}/pipward_${language}.qm)
  endforeach()
  file(CONFIGURE OUTPUT ${folder}/translation.qrc
    CONTENT "<RCC><qresource prefix=\"/pipward/translation\">${entries}</qresource></RCC>\n")
  add_custom_target(pipward_released_texts DEPENDS ${released})
  target_sources(pipward_desktop_objects PRIVATE ${folder}/translation.qrc)
  set_property(TARGET pipward_desktop_objects APPEND PROPERTY AUTOGEN_TARGET_DEPENDS pipward_released_texts)
  add_dependencies(pipward_desktop_objects pipward_released_texts)
else()
  message(STATUS "Qt's lrelease is not here: the desktop's host speaks English only")
endif()

# The texts to translate, collected anew: the library's from its declarations and from what
# its sources say, the host's from its sources.
add_executable(pipward_list_texts EXCLUDE_FROM_ALL translation/list_texts.cpp translation/said_forms.cpp)
target_include_directories(pipward_list_texts PRIVATE ${CMAKE_CURRENT_SOURCE_DIR})
target_link_libraries(pipward_list_texts PRIVATE pipward pipward_warnings)
if(QT_COLLECT_TEXTS)
  set(library_texts ${CMAKE_CURRENT_BINARY_DIR}/library_texts.cpp)
  foreach(language ${languages})
    list(APPEND text_files ${CMAKE_CURRENT_SOURCE_DIR}/translation/pipward_${language}.ts)
  endforeach()
  add_custom_target(collect_texts
    COMMAND pipward_list_texts ${PROJECT_SOURCE_DIR}/lib/pipward > ${library_texts}
    COMMAND ${QT_COLLECT_TEXTS} -silent -no-obsolete -locations none ${CMAKE_CURRENT_SOURCE_DIR} ${library_texts}
      -ts ${text_files}
    VERBATIM)
endif()
