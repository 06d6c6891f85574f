# SPDX-License-Identifier: MIT
# See redo_in_r.
options(warn = -1)

# The lines between ```r and ``` of one page.
linesOfR <- function(page) {
  text <- readLines(page, encoding = "UTF-8")
  from <- which(text == "```r")
  until <- which(text == "```")
  unlist(lapply(from, function(start) text[seq(start + 1, min(until[until > start]) - 1)]))
}

# "# 0.55 0.88" at the end of a line, as words; nothing for any other comment.
statedAfter <- function(line) {
  comment <- sub("^.*    # ", "", line)
  if (comment == line || !grepl("^(-?([0-9.]+|Inf) ?)+$", comment)) return(character())
  strsplit(comment, " +")[[1]]
}

lastDigit <- function(word) {
  decimals <- if (grepl("[.]", word)) nchar(sub("^[^.]*[.]", "", word)) else 0
  10^-decimals
}

agrees <- function(value, word) {
  stated <- as.numeric(word)
  if (is.na(value)) return(FALSE)
  if (is.infinite(stated)) return(value == stated)
  abs(value - stated) <= 0.5001 * lastDigit(word)
}

compared <- 0
differing <- 0
for (page in sort(list.files(commandArgs(TRUE)[1], "[.]md$", full.names = TRUE))) {
  lines <- linesOfR(page)
  name <- sub("[.]md$", "", basename(page))
  if (length(lines) == 0) next
  expressions <- tryCatch(parse(text = lines, keep.source = TRUE), error = function(e) e)
  if (inherits(expressions, "error")) {
    cat(sprintf("%-28s R can't read it: %s\n", name, conditionMessage(expressions)))
    differing <- differing + 1
    next
  }
  ends <- sapply(attr(expressions, "srcref"), function(reference) reference[3])
  own <- new.env(parent = globalenv())
  for (i in seq_along(expressions)) {
    value <- tryCatch(eval(expressions[[i]], own), error = function(e) e)
    if (inherits(value, "error")) {
      cat(sprintf("%-28s R stops: %s\n", name, conditionMessage(value)))
      differing <- differing + 1
      break
    }
    # Of several expressions on a line, the last gives what is stated.
    words <- if (i == length(expressions) || ends[i + 1] != ends[i]) statedAfter(lines[ends[i]]) else character()
    if (length(words) == 0) next
    values <- as.numeric(unlist(value))
    same <- length(values) == length(words) && all(mapply(agrees, values, words))
    compared <- compared + length(words)
    if (!same) differing <- differing + 1
    cat(sprintf("%-28s page %-22s R %-30s %s\n", name, paste(words, collapse = " "),
                paste(format(values, digits = 7, trim = TRUE), collapse = " "), if (same) "same" else "DIFFERS"))
  }
}
cat(sprintf("%d numbers compared, %d lines differ\n", compared, differing))
quit(status = if (differing > 0 || compared == 0) 1 else 0)
