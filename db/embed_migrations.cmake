# SPDX-License-Identifier: MIT
# Turns migrations/NNNN_what_it_does.sql files into released_migrations.inc: one initializer of db::Migration for each.
function(embed_migrations output)
    set(text "")
    foreach(file IN LISTS ARGN)
        set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${file})
        get_filename_component(name ${file} NAME_WE)
        string(REGEX MATCH "^[0-9]+" number ${name})
        math(EXPR version "1${number} - 10000")  # not read as octal
        file(READ ${file} sql)
        string(APPEND text "{${version}, \"${name}\", R\"sql(${sql})sql\"},\n")
    endforeach()
    file(CONFIGURE OUTPUT ${output} CONTENT "${text}" @ONLY)
endfunction()
