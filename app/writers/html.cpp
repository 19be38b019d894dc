#include "writers.hpp"

#include "../fault.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace whittaw::app {

namespace {

/// Everything that came from a file goes through here; nothing in it can become markup.
std::string escaped(std::string_view text) {
  std::string result;
  const std::string clean = printable(text);
  for (const char c : clean) {
    switch (c) {
    case '&': result += "&amp;"; break;
    case '<': result += "&lt;"; break;
    case '>': result += "&gt;"; break;
    case '"': result += "&quot;"; break;
    case '\'': result += "&#39;"; break;
    default: result += c;
    }
  }
  return result;
}

/// All sizes hang on the body's, so that a full card can be set smaller as a whole.
constexpr std::string_view style = R"(
*{box-sizing:border-box}
body{line-height:1.22;font-family:"DejaVu Sans",Arial,sans-serif;color:#000;background:#fff;
margin:0 auto;max-width:192mm;padding:3mm}
p{margin:0}
h1{font-size:1.7em;line-height:1.1;margin:0}
.sub{margin:0 0 .3em;font-size:.9em}
h2{font-size:1em;margin:.45em 0 .2em;border-bottom:.1em solid #000}
.finding{margin:.2em 0;padding:.15em .5em;border-left:.3em solid #000;font-size:.9em}
.finding b{display:inline-block;min-width:3.6em;text-transform:uppercase}
.stop{border:.25em solid #000;font-size:1.25em;font-weight:bold}
.warn{border:.12em solid #000;border-left-width:.5em}
.care{columns:2;column-gap:1.5em;margin:0;padding:0;list-style:none;font-size:.88em}
.care li{break-inside:avoid;margin:0 0 .2em;padding-left:1.4em;text-indent:-1.4em}
.care li::before{content:"\26A0\00A0";font-weight:bold}
ol{list-style:none;margin:0;padding:0;counter-reset:step}
ol>li{counter-increment:step;margin:0 0 .25em;padding-left:3.6em;position:relative;
break-inside:avoid}
ol>li::before{content:counter(step);position:absolute;left:1.5em;font-weight:bold;font-size:1.2em;
line-height:1}
.box{position:absolute;left:0;top:.05em;width:1.3em;height:1.3em;border:.13em solid #000}
.tick{display:inline-block;width:1em;height:1em;border:.1em solid #000;vertical-align:-.1em}
table{border-collapse:collapse;width:100%}
.amounts td{padding:0 .5em 0 0;border-bottom:.04em solid #888;vertical-align:middle}
.amounts td:first-child{width:1.6em}
.weight{font-size:1.5em;font-weight:bold;white-space:nowrap;width:5.4em;line-height:1.1}
.measure{text-align:right;white-space:nowrap}
.note{display:block;font-size:.8em}
.rows{font-size:.85em}
.rows td,.rows th{text-align:left;padding:.05em .5em .05em 0;border-bottom:.04em solid #888;
overflow-wrap:anywhere}
.run{columns:2;column-gap:1.5em;margin:0;padding:0;list-style:none;font-size:.85em;
overflow-wrap:anywhere}
.know{margin:0;padding-left:1.2em;font-size:.8em}
.sources{font-size:.64em;line-height:1.15}
@media print{body{padding:0;max-width:none}}
)";

/// Lines that a text takes where so many characters fit on one.
double lines(std::string_view text, double characters) {
  const auto length = static_cast<double>(text.size());
  return std::ceil(std::max(length, 1.0) / characters);
}

/// Height of a card at full size, in lines of its body text, by counting characters. Rough: it only
/// chooses how small a full card is set.
double estimated_lines(const Sheet &sheet) {
  double sum = 2.5 + lines(sheet.subtitle, 100);
  for (const auto &finding : sheet.findings)
    sum += finding.level == Level::stop ? 1.6 * lines(finding.text, 62)
                                        : 0.6 + 0.9 * lines(finding.text, 92);
  double care = 0.0;
  for (const auto &caution : sheet.cautions) care += 0.18 + 0.9 * lines(caution, 48);
  sum += 2.0 + care / 2.0;
  for (const auto &step : sheet.steps) {
    sum += 0.3 + lines(step.text, 82);
    for (const auto &amount : step.amounts)
      sum += 1.5 + (amount.note.empty() ? 0.0 : 0.8 * lines(amount.note, 62));
  }
  for (const auto &table : sheet.tables) {
    double cells = 0.0;
    for (const auto &row : table.rows) {
      std::size_t width = 0;
      for (const auto &cell : row)
        width += (table.compact ? std::min<std::size_t>(cell.size(), 37) : cell.size()) + 2;
      cells += 0.88 * lines(std::string(width, ' '), table.compact ? 50 : 104);
    }
    sum += 1.6 + (table.compact ? cells / 2.0 + 0.5 : cells + 1.0);
    if (!table.note.empty()) sum += 1.0;
  }
  if (!sheet.remarks.empty()) sum += 1.6;
  for (const auto &remark : sheet.remarks) sum += 0.8 * lines(remark, 110);
  std::size_t sources = 0;
  for (const auto &source : sheet.sources) sources += source.size() + 3;
  if (sources > 0) sum += 1.6 + 0.66 * lines(std::string(sources, ' '), 140);
  return sum;
}

/// Body size in points that fits the sheet on one page, within what can be read.
double body_points(const Sheet &sheet, Paper paper) {
  constexpr double full = 11.0;
  constexpr double smallest = 6.5;
  // Lines of 11 points on a page less its margins: A4 is 297 mm high and 210 wide, Letter 279.4 and
  // 215.9. Smaller type fits more lines and more characters in each, so the size goes by the root.
  const double room = paper == Paper::a4 ? 56.5 : 52.5;
  return std::clamp(full * std::sqrt(room / estimated_lines(sheet)), smallest, full);
}

void write_finding(std::string &out, const SheetFinding &finding) {
  out += fmt::format("<p class=\"finding {0}\"><b>{0}</b> {1}</p>\n", level_name(finding.level),
                     escaped(finding.text));
}

void write_step(std::string &out, const SheetStep &step) {
  out += "<li><span class=\"box\"></span>" + escaped(step.text);
  if (!step.amounts.empty()) {
    out += "<table class=\"amounts\">";
    for (const auto &amount : step.amounts) {
      const std::string note =
          amount.note.empty() ? "" : "<span class=\"note\">" + escaped(amount.note) + "</span>";
      out +=
          fmt::format("<tr><td><span class=\"tick\"></span></td><td class=\"weight\">{}</td>"
                      "<td>{}{}</td><td class=\"measure\">{}</td></tr>",
                      escaped(amount.weight), escaped(amount.name), note, escaped(amount.measure));
    }
    out += "</table>";
  }
  out += "</li>\n";
}

/// A text cut short for a narrow place, between characters.
std::string shortened(const std::string &text) {
  constexpr std::size_t longest = 36;
  if (text.size() <= longest) return text;
  std::size_t end = longest;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
  return text.substr(0, end) + "\u2026";
}

void write_compact(std::string &out, const SheetTable &table) {
  out += "<ul class=\"run\">\n";
  for (const auto &row : table.rows) {
    out += "<li><b>" + escaped(shortened(row.front())) + "</b>";
    for (std::size_t i = 1; i + 1 < row.size(); ++i) out += " \u00b7 " + escaped(shortened(row[i]));
    out += " \u00b7 <b>" + escaped(row.back()) + "</b></li>\n";
  }
  out += "</ul>\n";
}

void write_rows(std::string &out, const SheetTable &table) {
  out += "<table class=\"rows\"><thead><tr>";
  for (const auto &column : table.columns) out += "<th scope=\"col\">" + escaped(column) + "</th>";
  out += "</tr></thead><tbody>\n";
  for (const auto &row : table.rows) {
    out += "<tr>";
    for (const auto &cell : row) out += "<td>" + escaped(cell) + "</td>";
    out += "</tr>\n";
  }
  out += "</tbody></table>\n";
}

void write_table(std::string &out, const SheetTable &table) {
  std::string title = table.title;
  if (table.compact) {
    title += ": ";
    for (std::size_t i = 0; i < table.columns.size(); ++i)
      title += (i ? " \u00b7 " : "") + table.columns[i];
  }
  out += fmt::format("<h2>{}</h2>\n", escaped(title));
  if (table.compact)
    write_compact(out, table);
  else
    write_rows(out, table);
  if (!table.note.empty()) out += "<p class=\"sub\">" + escaped(table.note) + "</p>\n";
}

void write_list(std::string &out, std::string_view title, std::string_view style_class,
                const std::vector<std::string> &lines) {
  if (lines.empty()) return;
  out += fmt::format("<h2>{}</h2>\n<ul class=\"{}\">\n", title, style_class);
  for (const auto &line : lines) out += "<li>" + escaped(line) + "</li>\n";
  out += "</ul>\n";
}

} // namespace

std::string write_html(const Sheet &sheet, Paper paper) {
  std::string out = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                    "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                    "style-src 'unsafe-inline'\">\n";
  out += fmt::format("<title>{}</title>\n<style>@page{{size:{};margin:9mm}}"
                     "body{{font-size:{:.2f}pt}}{}</style>\n</head>\n",
                     escaped(sheet.title), paper == Paper::a4 ? "A4" : "letter",
                     body_points(sheet, paper), style);
  out += fmt::format("<body>\n<main>\n<h1>{}</h1>\n<p class=\"sub\">{}</p>\n", escaped(sheet.title),
                     escaped(sheet.subtitle));
  for (const auto &finding : sheet.findings) write_finding(out, finding);
  write_list(out, "Take care", "care", sheet.cautions);
  if (!sheet.steps.empty()) {
    out += "<h2>Steps</h2>\n<ol>\n";
    for (const auto &step : sheet.steps) write_step(out, step);
    out += "</ol>\n";
  }
  for (const auto &table : sheet.tables) write_table(out, table);
  write_list(out, "To know", "know", sheet.remarks);
  if (!sheet.sources.empty()) {
    out += "<h2>Sources</h2>\n<p class=\"sources\">";
    for (std::size_t i = 0; i < sheet.sources.size(); ++i)
      out += (i ? " \u00b7 " : "") + escaped(sheet.sources[i]);
    out += "</p>\n";
  }
  return out + "</main>\n</body>\n</html>\n";
}

} // namespace whittaw::app
