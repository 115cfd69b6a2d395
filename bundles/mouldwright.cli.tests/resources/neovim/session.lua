-- Drives a language server from Neovim as somebody at the keyboard would: open, read what is wrong, complete, mend, type, hover, rename, lay out.
-- The command of the server, the folder and the log come in the environment. Ends with 1 at the first step that goes wrong.
local folder = os.getenv("MOULDWRIGHT_FOLDER")
local log = io.open(os.getenv("MOULDWRIGHT_LOG"), "w")

local function say(words)
  log:write(words .. "\n")
  log:flush()
end

local function stop(words)
  say("FAILED: " .. words)
  log:close()
  vim.cmd("cquit 1")
end

local function must(held, words)
  if not held then
    stop(words)
  end
end

local function wait(words, condition)
  if not vim.wait(120000, condition, 20) then
    stop("waited in vain for " .. words)
  end
  say("seen: " .. words)
end

vim.cmd("edit " .. folder .. "/box.plug")
local buffer = vim.api.nvim_get_current_buf()
local ended
local id = vim.lsp.start_client({
  name = "mouldwright",
  cmd = vim.split(os.getenv("MOULDWRIGHT_SERVER"), "\n"),
  root_dir = folder,
  on_exit = function(code)
    ended = code
  end,
})
must(id, "the server does not start")
must(vim.lsp.buf_attach_client(buffer, id), "the buffer is not attached")
wait("initialized", function()
  return vim.lsp.get_client_by_id(id) ~= nil
end)
local client = vim.lsp.get_client_by_id(id)

local function codes()
  local found = {}
  for _, finding in ipairs(vim.diagnostic.get(buffer)) do
    found[finding.code or (finding.user_data and finding.user_data.lsp and finding.user_data.lsp.code) or ""] = finding
  end
  return found
end

local function line(words)
  for number, text in ipairs(vim.api.nvim_buf_get_lines(buffer, 0, -1, false)) do
    local column = text:find(words, 1, true)
    if column then
      return number, column - 1, text
    end
  end
  stop("no line has " .. words)
end

local function ask(method, words, more)
  local number, column = line(words)
  local params = { textDocument = vim.lsp.util.make_text_document_params(buffer), position = { line = number - 1, character = column } }
  local answers = vim.lsp.buf_request_sync(buffer, method, vim.tbl_extend("force", params, more or {}), 120000)
  must(answers and answers[id] and answers[id].result, method .. " is not answered: " .. vim.inspect(answers))
  return answers[id].result
end

-- open: the slip is told where it stands
wait("a finding of the misspelt word", function()
  local finding = codes()["MW901"]
  return finding and finding.lnum == line("overfil 15") - 1
end)

-- complete
local offered = ask("textDocument/completion", "overfil 15")
local labels = {}
for _, item in ipairs(offered.items or offered) do
  labels[item.label] = true
end
must(labels["overfill"], "overfill is not offered: " .. vim.inspect(labels))
say("seen: completion")

-- quick fix
local number, column = line("overfil 15")
local place = { line = number - 1, character = column }
local actions = ask("textDocument/codeAction", "overfil 15", { range = { start = place, ["end"] = place }, context = { diagnostics = {} } })
local mended = false
for _, action in ipairs(actions) do
  if action.kind == "quickfix" then
    vim.lsp.util.apply_workspace_edit(action.edit, client.offset_encoding)
    mended = true
    break
  end
end
must(mended, "no quick fix: " .. vim.inspect(actions))
must(select(3, line("overfill 15")), "the fix is not applied")
wait("no finding after the fix", function()
  return codes()["MW901"] == nil
end)

-- type: a unit that measures something else, stroke by stroke, and back
number, column = line("overfill 15")
for stroke in (" kg"):gmatch(".") do
  local text = vim.api.nvim_buf_get_lines(buffer, number - 1, number, false)[1]
  vim.api.nvim_buf_set_text(buffer, number - 1, #text, number - 1, #text, { stroke })
end
wait("a finding of the wrong unit", function()
  return codes()["MW903"] ~= nil
end)
local text = vim.api.nvim_buf_get_lines(buffer, number - 1, number, false)[1]
vim.api.nvim_buf_set_lines(buffer, number - 1, number, false, { (text:gsub(" kg$", "")) })
wait("no finding of the unit any more", function()
  return codes()["MW903"] == nil
end)

-- hover
local hover = ask("textDocument/hover", "Pour36")
local shown = table.concat(vim.lsp.util.convert_input_to_markdown_lines(hover.contents), "\n")
must(shown:find("The only foam.", 1, true), "the hover does not tell of the foam: " .. shown)
say("seen: hover")

-- rename, here and in the library
number, column = line("Pour36")
vim.api.nvim_win_set_cursor(0, { number, column })
vim.lsp.buf.rename("Pour40")
wait("the new name", function()
  return vim.api.nvim_buf_get_lines(buffer, number - 1, number, false)[1]:find("Pour40", 1, true) ~= nil
end)
local library = vim.fn.bufnr(folder .. "/stock/small.plug")
must(library > 0, "the library is not opened for the change")
must(table.concat(vim.api.nvim_buf_get_lines(library, 0, -1, false), "\n"):find("foam Pour40", 1, true), "the library keeps the old name")
say("seen: rename across files")

-- lay out
number = line("lap 50")
vim.api.nvim_buf_set_lines(buffer, number - 1, number, false, { "  lap      50" })
vim.lsp.buf.formatting_sync(nil, 120000)
must(vim.api.nvim_buf_get_lines(buffer, number - 1, number, false)[1] == "        lap 50", "the line is not laid out: " .. vim.inspect(vim.api.nvim_buf_get_lines(buffer, number - 1, number, false)))
say("seen: layout")

-- end
vim.lsp.stop_client(id)
wait("the server's end", function()
  return ended ~= nil
end)
must(ended == 0, "the server ended with " .. tostring(ended))
say("all is well")
log:close()
vim.cmd("qall!")
