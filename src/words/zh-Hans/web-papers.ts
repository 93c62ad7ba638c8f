import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const webPapers: Catalogue = {
  // Setting
  "a picture of at most {megabytes} MB": "不超过 {megabytes} MB 的图片",
  "a picture of at most {pixels} pixels a side": "每边不超过 {pixels} 像素的图片",
  "a PNG or JPEG that can be read; its content is damaged": "可以读取的 PNG 或 JPEG；此文件内容已损坏",
  "the logo must be {allowed}": "徽标必须是{allowed}",
  "no font at hand holds {letters}: write it in other letters, or leave it out":
    "现有字体都不包含{letters}：请改用其他文字，或将其省略",
  "no font at hand holds some letter of this document": "现有字体不包含此文档中的某个文字",
  "Page {page} of {pages}": "第 {page} 页，共 {pages} 页",
  "Eye-care practice": "眼科诊所",
  Name: "姓名",
  Signature: "签名",
  Date: "日期",
  // Batches, pages
  "there is nothing to print for any of these children": "这些孩子都没有可打印的文件",
  "Not printed, and why": "未打印的文件及原因",
  "For the practice; it belongs to no family.": "供诊所使用，不属于任何家庭。",
  "{missing, plural, one {# of the {all} papers asked for could not be made.} other {# of the {all} papers asked for could not be made.}}":
    "{missing, plural, other {所要求的 {all} 份文件中有 # 份无法生成。}}",
  Why: "原因",
}
